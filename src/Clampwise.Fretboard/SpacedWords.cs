namespace Clampwise.Fretboard;

/// <summary>Splits a text at white space and keeps where each word started.</summary>
internal static class SpacedWords
{
    /// <summary>How many characters of white space come first.</summary>
    public static int Indent(string text) => text.Length - text.TrimStart().Length;

    public static IEnumerable<(string Word, int Start)> Split(string text)
    {
        int start = 0;
        while (start < text.Length)
        {
            if (char.IsWhiteSpace(text[start]))
            {
                start++;
                continue;
            }

            int end = start;
            while (end < text.Length && !char.IsWhiteSpace(text[end]))
            {
                end++;
            }

            yield return (text[start..end], start);
            start = end;
        }
    }
}
