using System.Globalization;
using System.Text;

namespace Clampwise.Theory;

/// <summary>
/// Text from outside made harmless to show: what would command a terminal, turn the direction of reading or break a line stands there
/// as an escape that can be read, such as <c>\u001b</c>. In JSON the escape means the same character, so that nothing is lost there.
/// </summary>
public static class VisibleText
{
    /// <summary>
    /// The text with every control, format (among them bidirectional), line separator and paragraph separator character and every lone
    /// surrogate (Unicode general categories Cc, Cf, Zl, Zp, Cs) as <c>\uXXXX</c>, in UTF-16 units. A joiner between two signs stays,
    /// since they are one grapheme cluster with it.
    /// </summary>
    /// <param name="text">Any text.</param>
    /// <param name="keepsLineEnds">True if line feeds, alone or after a carriage return, are the caller's own.</param>
    public static string Of(string text, bool keepsLineEnds = false)
    {
        int first = 0;
        while (first < text.Length && IsHarmless(text[first]))
        {
            first++;
        }

        return first == text.Length ? text : Escaped(text, first, keepsLineEnds);
    }

    private static string Escaped(string text, int first, bool keepsLineEnds)
    {
        var shown = new StringBuilder(text, 0, first, text.Length + 16);
        for (int at = first; at < text.Length;)
        {
            bool isWhole = Rune.TryGetRuneAt(text, at, out Rune rune);
            int length = isWhole ? rune.Utf16SequenceLength : 1;
            if (isWhole && (!IsRaw(Rune.GetUnicodeCategory(rune)) || IsJoiner(text, at) || (keepsLineEnds && IsLineEnd(text, at))))
            {
                shown.Append(text, at, length);
            }
            else
            {
                foreach (char unit in text.AsSpan(at, length))
                {
                    shown.Append(CultureInfo.InvariantCulture, $"\\u{(int)unit:x4}");
                }
            }

            at += length;
        }

        return shown.ToString();
    }

    // Signs that nearly all text is made of, the glyphs of the screens among them: asking for a category takes longer.
    private static bool IsHarmless(char sign) => sign is (>= ' ' and <= '~') or (>= '\u00c0' and <= '\u02ff') or (>= '\u2190' and <= '\u2bff');

    private static bool IsRaw(UnicodeCategory category) => category
        is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator or UnicodeCategory.Surrogate;

    // U+200C and U+200D, where signs that are not of these kinds stand on both sides.
    private static bool IsJoiner(string text, int at) => text[at] is '\u200c' or '\u200d'
        && at > 0 && !IsSpaceOrRaw(CharUnicodeInfo.GetUnicodeCategory(text[at - 1]))
        && at + 1 < text.Length && !IsSpaceOrRaw(CharUnicodeInfo.GetUnicodeCategory(text[at + 1]));

    // Half of a pair counts as a sign: a lone one is escaped by itself.
    private static bool IsSpaceOrRaw(UnicodeCategory category) =>
        category == UnicodeCategory.SpaceSeparator || (category != UnicodeCategory.Surrogate && IsRaw(category));

    private static bool IsLineEnd(string text, int at) => text[at] == '\n' || (text[at] == '\r' && at + 1 < text.Length && text[at + 1] == '\n');
}
