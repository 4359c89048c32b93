using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>The short name of a drill in files and commands: lower-case letters, digits and single hyphens, such as <c>open-a</c>.</summary>
public readonly record struct DrillId
{
    private readonly string? _text;

    private DrillId(string text) => _text = text;

    /// <summary>Reads an id.</summary>
    public static Result<DrillId> Parse(string text) =>
        text.Length > 0 && text.Split('-').All(part => part.Length > 0 && part.All(sign => char.IsAsciiLetterLower(sign) || char.IsAsciiDigit(sign)))
            ? new DrillId(text)
            : PracticeWords.BadDrillId(text);

    /// <inheritdoc/>
    public override string ToString() => _text ?? "none";
}
