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
        int mark = text.TakeWhile(char.IsWhiteSpace).Count();
        bool isFromHome = mark < text.Length && text[mark] == FromHomeMark;
        string body = isFromHome ? new string(' ', mark + 1) + text[(mark + 1)..] : text;
        (string Word, int Start)[] words = [.. SplitStops(body)];
        if (words.Length != setup.StringCount)
        {
            return FretboardWords.WrongStringCount(words.Length, setup.StringCount);
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
        (string Word, int Start)[] words = [.. Words.Split(text)];
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
        if (!isBeside && !int.TryParse(word, style, CultureInfo.InvariantCulture, out fret))
        {
            return FretboardWords.ExpectedStop(word, number, isFromHome);
        }

        long fromNut = (long)fret + (isFromHome ? setup.HomeFret.Number : 0);
        return fromNut is >= 1 and <= Fret.Last
            ? StringStop.At(Fret.Of((int)fromNut))
            : FretboardWords.FretOffNeck(word, number, isFromHome ? setup.HomeFret : Fret.Nut);
    }

    public static string Print(Fretting fretting) => Join(fretting.Stops.Select(stop => stop.ToString()));

    public static string PrintFromHome(Fretting fretting, Setup setup)
    {
        string Stop(StringStop stop) => stop.Finger is { } fret
            ? fret == setup.HomeFret ? "=" : (fret - setup.HomeFret).ToString(CultureInfo.InvariantCulture)
            : stop.ToString();
        return $"{FromHomeMark} {string.Join(' ', fretting.Stops.Select(Stop))}";
    }

    private static string Join(IEnumerable<string> stops)
    {
        string[] words = [.. stops];
        return string.Join(words.All(word => word.Length == 1) ? "" : " ", words);
    }
}
