namespace Clampwise.Plain;

/// <summary>A word that was typed, and the column where it stands, counted from 1.</summary>
internal readonly record struct TypedWord(string Text, int Column)
{
    /// <summary>In lower case, without marks that close a word in writing.</summary>
    public string Plain => Text.ToLowerInvariant().TrimEnd(':', '.', ';', '!');
}

/// <summary>A line as it was typed, and its words.</summary>
/// <param name="Text">The whole line.</param>
internal sealed record TypedLine(string Text)
{
    /// <summary>Its words, first one first.</summary>
    public IReadOnlyList<TypedWord> Words { get; } = [.. Split(Text)];

    /// <summary>The first word, plain; empty on an empty line.</summary>
    public string First => Words.Count > 0 ? Words[0].Plain : "";

    /// <summary>The column after the last word.</summary>
    public int EndColumn => Text.TrimEnd().Length + 1;

    /// <summary>All words in lower case with one space between them.</summary>
    public string InShort => string.Join(' ', Words.Select(word => word.Text.ToLowerInvariant()));

    /// <summary>The text from a word on; empty if there are not so many.</summary>
    public string From(int index) => index < Words.Count ? Text[(Words[index].Column - 1)..].TrimEnd() : "";

    private static IEnumerable<TypedWord> Split(string text)
    {
        int start = 0;
        while (start < text.Length)
        {
            int end = start;
            while (end < text.Length && !char.IsWhiteSpace(text[end]))
            {
                end++;
            }

            if (end > start)
            {
                yield return new TypedWord(text[start..end], start + 1);
            }

            start = end + 1;
        }
    }
}
