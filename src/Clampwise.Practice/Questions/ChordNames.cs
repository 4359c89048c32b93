using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>Reads chord names as players type them and tells whether they name what sounds.</summary>
internal static class ChordNames
{
    public static Result<ChordSymbol> Parse(string text)
    {
        string word = text.Trim();
        int end = word.Length > 0 ? 1 : 0;
        while (end < word.Length && word[end] is '#' or 'b' or '♯' or '♭')
        {
            end++;
        }

        return NoteName.Parse(word[..end]).Select(root => Split(root, word[end..]));
    }

    public static bool Accepts(Sonority sonority, ChordSymbol symbol) => sonority.Readings.Any(reading => IsSame(reading.Symbol, symbol));

    public static bool IsSame(ChordSymbol one, ChordSymbol other) =>
        one.Root.Class == other.Root.Class && one.Suffix == other.Suffix && one.Bass?.Class == other.Bass?.Class;

    private static ChordSymbol Split(NoteName root, string rest)
    {
        int slash = rest.LastIndexOf('/');
        return slash >= 0 && NoteName.Parse(rest[(slash + 1)..]).TryGet(out NoteName bass, out _)
            ? new ChordSymbol(root, rest[..slash], bass)
            : new ChordSymbol(root, rest);
    }
}
