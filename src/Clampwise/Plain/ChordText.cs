namespace Clampwise.Plain;

/// <summary>A chord name as it is typed in a hurry.</summary>
internal static class ChordText
{
    /// <summary>The root and the bass in upper case: nobody should need Shift for them. The length stays the same, and so do columns.</summary>
    public static string Capitalised(string name)
    {
        char[] signs = name.ToCharArray();
        for (int i = 0; i < signs.Length; i++)
        {
            bool begins = i == 0 || (signs[i - 1] == '/' && (i + 1 == signs.Length || signs[i + 1] is '#' or 'b' or '♯' or '♭'));
            signs[i] = begins && signs[i] is >= 'a' and <= 'g' ? char.ToUpperInvariant(signs[i]) : signs[i];
        }

        return new string(signs);
    }
}
