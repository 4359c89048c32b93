using System.Globalization;
using Clampwise.Terminal;
using Clampwise.Theory;

namespace Clampwise.Look;

/// <summary>The look of one tone, written such as <c>#d9483b bright-red bold</c>: colour, its stand-in among the sixteen, and styles.</summary>
/// <param name="Ink">The colour; null for the terminal's own.</param>
/// <param name="Emphasis">Bold, underlined, reversed.</param>
internal sealed record ThemeStyle(ThemeColour? Ink, Emphasis Emphasis)
{
    private const int HexDigits = 6;

    private static readonly Dictionary<string, Emphasis> s_styles = new()
    {
        ["bold"] = Emphasis.Bold,
        ["underline"] = Emphasis.Underline,
        ["reverse"] = Emphasis.Reverse,
    };

    /// <summary>Reads the words of a style, in any order.</summary>
    public static Result<ThemeStyle> Parse(string text)
    {
        Rgb? exact = null;
        BasicColour? basic = null;
        var style = Emphasis.None;
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (s_styles.TryGetValue(word, out Emphasis more))
            {
                style |= more;
            }
            else if (ThemeColour.BasicNames.TryGetValue(word, out BasicColour name))
            {
                basic = name;
            }
            else if (word[0] == '#' && word.Length == HexDigits + 1 && int.TryParse(word[1..], NumberStyles.AllowHexSpecifier, null, out int rgb))
            {
                exact = Rgb.Of(rgb);
            }
            else
            {
                return new Fault($"'{word}' is no colour or style: expected #rrggbb, one of {string.Join(", ", ThemeColour.BasicNames.Keys)}, bold, underline or reverse");
            }
        }

        return exact is null && basic is not null
            ? new Fault($"'{text}' names one of the sixteen colours without an exact one: add it as #rrggbb")
            : new ThemeStyle(exact is { } ink ? new ThemeColour(ink, basic) : null, style);
    }
}
