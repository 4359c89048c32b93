using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>A chord name as a player types it: nobody should need Shift for the root.</summary>
internal static class AnsweredName
{
    /// <summary>The symbol. The root is read in either case; the rest is read as everywhere, since M and m are two things.</summary>
    public static Result<ChordSymbol> Read(string text)
    {
        string name = text.Trim();
        if (name.Length == 0 || char.ToUpperInvariant(name[0]) is < 'A' or > 'G')
        {
            return PracticeWords.NoName(name, text.Length - text.TrimStart().Length + 1);
        }

        string start = text[..^text.TrimStart().Length];
        return ChordSymbol.Parse($"{start}{char.ToUpperInvariant(name[0])}{text[(start.Length + 1)..]}");
    }
}
