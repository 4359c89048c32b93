using System.Globalization;
using Terminal.Gui.Text;

namespace Clampwise.Terminal;

/// <summary>How wide text is on a terminal, where some signs take two columns and marks on a letter none of their own.</summary>
public static class Columns
{
    /// <summary>Columns that a text takes.</summary>
    public static int Of(string text)
    {
        if (IsOneEach(text))
        {
            return text.Length;
        }

        int columns = 0;
        for (int at = 0; at < text.Length; at += StringInfo.GetNextTextElementLength(text, at))
        {
            columns += OfCluster(text, at);
        }

        return columns;
    }

    /// <summary>As much of a text's beginning as fits, in whole grapheme clusters.</summary>
    public static string Take(string text, int columns)
    {
        if (IsOneEach(text))
        {
            return text[..Math.Clamp(columns, 0, text.Length)];
        }

        int at = 0;
        while (at < text.Length && OfCluster(text, at) <= columns)
        {
            columns -= OfCluster(text, at);
            at += StringInfo.GetNextTextElementLength(text, at);
        }

        return text[..at];
    }

    /// <summary>True if every character takes one column: letters of the Latin script, arrows, lines, dots and signs of music.</summary>
    internal static bool IsOneEach(string text)
    {
        foreach (char sign in text)
        {
            if (sign is not ((>= ' ' and <= '~') or (>= '\u00a1' and <= '\u02ff') or (>= '\u2010' and <= '\u2027') or (>= '\u2190' and <= '\u22ff')
                or (>= '\u2500' and <= '\u25fc') or (>= '\u2660' and <= '\u266f') or (>= '\u2800' and <= '\u28ff')))
            {
                return false;
            }
        }

        return true;
    }

    private static int OfCluster(string text, int at) =>
        text.Substring(at, StringInfo.GetNextTextElementLength(text, at)).GetColumns();
}
