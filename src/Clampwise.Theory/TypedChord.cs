namespace Clampwise.Theory;

/// <summary>A chord name as it is typed in a hurry: nobody should need Shift for its root and its bass.</summary>
public static class TypedChord
{
    /// <summary>Reads a name; the root and the bass may be written small. Columns of a fault are those of the text.</summary>
    public static Result<ChordSymbol> Parse(string text) => ChordSymbol.Parse(Capitalised(text));

    /// <summary>The root and the bass in upper case. The length stays the same.</summary>
    public static string Capitalised(string name)
    {
        char[] signs = name.ToCharArray();
        for (int i = 0; i < signs.Length; i++)
        {
            bool isBass = i > 0 && signs[i - 1] == '/' && (i + 1 == signs.Length || signs[i + 1] is '#' or 'b' or '♯' or '♭');
            signs[i] = i == 0 || isBass ? Capital(signs[i]) : signs[i];
        }

        return new string(signs);
    }

    /// <summary>A letter of a note in upper case; any other sign as it is.</summary>
    public static char Capital(char sign) => sign is >= 'a' and <= 'g' ? char.ToUpperInvariant(sign) : sign;
}
