namespace Clampwise.Theory;

/// <summary>Reads a whole chord symbol: root, quality, slash bass.</summary>
internal static class ChordSymbolParser
{
    public static Result<ChordSymbol> Parse(string text)
    {
        int start = text.Length - text.TrimStart().Length;
        string trimmed = text.TrimEnd();
        if (!NoteName.ParseStart(trimmed, start).TryGet(out var root, out Fault? fault))
        {
            return start >= trimmed.Length ? TheoryWords.ExpectedChord(start) : fault;
        }

        var reader = new ChordTextReader(trimmed, start + root.Length);
        if (!ChordQualityParser.Parse(reader).TryGet(out ChordQuality? quality, out fault))
        {
            return fault;
        }

        return reader.IsAtEnd
            ? new ChordSymbol(root.Name, quality)
            : Bass(trimmed, reader.Position).Select(bass => new ChordSymbol(root.Name, quality, bass));
    }

    private static Result<NoteName> Bass(string text, int slash)
    {
        int start = slash + 1;
        while (start < text.Length && text[start] == ' ')
        {
            start++;
        }

        return NoteName.ParseStart(text, start).Then<NoteName>(part =>
            start + part.Length == text.Length ? part.Name : TheoryWords.NothingMore(text, start + part.Length));
    }
}
