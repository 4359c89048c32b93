using System.Globalization;
using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>
/// Fretting text, lowest string first. From the nut: <c>x 0 4 6 0 0</c>, or closed up when every fret is one digit. From the home
/// clamp: <c>^</c> first, <c>=</c> for a finger beside the clamp, a negative number for one behind it.
/// </summary>
internal static class FrettingText
{
    private const char FromHomeMark = '^';

    public static Result<Fretting> Parse(string text, Setup setup)
    {
        int mark = SpacedWords.Indent(text);
        bool isFromHome = mark < text.Length && text[mark] == FromHomeMark;
        string body = isFromHome ? new string(' ', mark + 1) + text[(mark + 1)..] : text;
        (string Word, int Start)[] words = [.. SplitStops(body)];
        if (words.Length != setup.StringCount)
        {
            int at = words.Length > setup.StringCount ? words[setup.StringCount].Start : text.TrimEnd().Length;
            return FretboardWords.WrongStringCount(words.Length, setup.StringCount, at);
        }

        var stops = new StringStop[words.Length];
        for (int index = 0; index < words.Length; index++)
        {
            StringNumber number = StringNumber.AtIndex(index, words.Length);
            if (!ParseStop(words[index].Word, isFromHome, setup, number).TryGet(out stops[index], out Fault? fault))
            {
                return fault.ShiftedBy(words[index].Start);
            }
        }

        return Fretting.Of(stops);
    }

    // One word alone is closed up: every character is a string of its own.
    private static IEnumerable<(string Word, int Start)> SplitStops(string text)
    {
        (string Word, int Start)[] words = [.. SpacedWords.Split(text)];
        return words.Length == 1 ? words[0].Word.Select((sign, index) => (sign.ToString(), words[0].Start + index)) : words;
    }

    private static Result<StringStop> ParseStop(string word, bool isFromHome, Setup setup, StringNumber number)
    {
        if (word is "x" or "X")
        {
            return StringStop.Muted;
        }

        if (word == "0")
        {
            return StringStop.Ringing;
        }

        int fret = 0;
        NumberStyles style = isFromHome ? NumberStyles.AllowLeadingSign : NumberStyles.None;
        bool isBeside = isFromHome && word == "=";
        // Zero is the ringing string above, and only in that one way of writing it: -0 or 00 would be a second name for '='.
        if (!isBeside && (!int.TryParse(word, style, CultureInfo.InvariantCulture, out fret) || fret == 0))
        {
            return FretboardWords.ExpectedStop(word, number, isFromHome);
        }

        Fret? fromNut = isFromHome ? HomeFret.Of(fret) is { } home ? setup.FromNut(home) : null : fret <= Fret.Last ? Fret.Of(fret) : null;
        return fromNut is { } found && found > Fret.Nut
            ? StringStop.At(found)
            : FretboardWords.FretOffNeck(word, number, isFromHome ? setup.HomeFret : Fret.Nut);
    }

    /// <summary>The column, counted from 1, of the stop at a place in a text that reads.</summary>
    public static int ColumnOf(string text, int index)
    {
        int mark = SpacedWords.Indent(text);
        string body = text[mark] == FromHomeMark ? new string(' ', mark + 1) + text[(mark + 1)..] : text;
        return SplitStops(body).ElementAt(index).Start + 1;
    }

    public static string Print(Fretting fretting) => Join(fretting.Stops.Select(stop => stop.ToString()));

    public static string PrintFromHome(Fretting fretting, Setup setup)
    {
        string Stop(StringStop stop) => stop.Finger is { } fret
            ? fret == setup.HomeFret ? "=" : setup.FromHome(fret).ToString()
            : stop.ToString();
        return $"{FromHomeMark} {string.Join(' ', fretting.Stops.Select(Stop))}";
    }

    private static string Join(IEnumerable<string> stops)
    {
        string[] words = [.. stops];
        return string.Join(words.All(word => word.Length == 1) ? "" : " ", words);
    }
}
