using System.Globalization;
using Clampwise.Application;
using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Plain;

/// <summary>
/// Reads a line that puts the hand somewhere: a whole fretting in either notation, or strings and what they do, such as
/// <c>3 fret 4</c>, <c>3 fret ^2</c> (counted from the home clamp), <c>5,6 mute</c>, <c>ring 1-3</c>.
/// </summary>
internal static class HandLine
{
    private static readonly HashSet<string> s_mute = ["mute", "muted", "mutes", "x", "off", "damp"];
    private static readonly HashSet<string> s_ring = ["ring", "rings", "ringing", "open", "o"];
    private static readonly HashSet<string> s_fret = ["fret", "frets", "f", "at", "on", "finger"];

    /// <summary>True if the line can only be meant for the hand.</summary>
    public static bool IsOne(TypedLine line) =>
        IsFretting(line) || line.First is "string" or "strings" || s_mute.Contains(line.First) || s_ring.Contains(line.First) || IsNumber(line.First);

    /// <summary>The voicing that the line makes of the one held now, or what is wrong with it, and where.</summary>
    public static Result<Voicing> Read(TypedLine line, Voicing now) => IsFretting(line)
        ? Voicing.Parse(now.Setup, Spaced(line), allowBehindClamp: true)
        : ReadStops(line, now);

    private static Result<Voicing> ReadStops(TypedLine line, Voicing now)
    {
        List<TypedWord> words = [.. line.Words.Where(word => word.Plain is not ("string" or "strings" or "the"))];
        if (words.Count > 0 && StopOf(words[0].Plain) is not null)
        {
            words = [.. words.Skip(1), words[0]];
        }

        int count = CountSet(words);
        if (count == 0)
        {
            return words is [] || StopOf(words[0].Plain) is not null
                ? new Fault("expected strings such as 3, 2-4 or 1,3,5, found nothing", line.EndColumn)
                : new Fault($"expected strings such as 3, 2-4 or 1,3,5, found '{words[0].Text}'", words[0].Column);
        }

        string text = string.Concat(words.Take(count).Select(word => word.Plain switch { "and" => ",", "to" => "-", var part => part }));
        if (!StringSet.Parse(text, now.Setup.StringCount).TryGet(out StringSet strings, out Fault? fault))
        {
            return fault.ShiftedBy(words[0].Column - 1);
        }

        TypedWord[] rest = [.. words.Skip(count).SkipWhile(word => s_fret.Contains(word.Plain))];
        return ReadStop(rest, now.Setup, SetupWords.Said(strings), line.EndColumn).Then(stop => Put(now, strings, stop, rest[0].Column));
    }

    // Numbers belong together if a comma, a hyphen, 'and' or 'to' joins them; another one beside them is a fret.
    private static int CountSet(List<TypedWord> words)
    {
        int count = 0;
        bool isOpen = true;
        while (count < words.Count && (isOpen ? IsNumber(words[count].Plain) : IsJoiner(words[count].Plain)))
        {
            string word = words[count].Plain;
            isOpen = word.EndsWith(',') || word.EndsWith('-') || word is "and" or "to";
            count++;
        }

        return count;
    }

    private static Result<StringStop> ReadStop(TypedWord[] rest, Setup setup, string strings, int end)
    {
        if (rest is [])
        {
            return new Fault($"say what {strings} should do: fret and a number, mute, or ring", end);
        }

        Result<StringStop> read = StopOf(rest[0].Plain) is { } stop ? stop : ReadFret(rest[0], setup);
        return read.IsGood && rest.Length > 1
            ? new Fault($"expected nothing after '{rest[0].Text}', found '{rest[1].Text}'", rest[1].Column)
            : read;
    }

    private static Result<StringStop> ReadFret(TypedWord word, Setup setup)
    {
        bool isFromHome = word.Plain.StartsWith('^');
        string digits = isFromHome ? word.Plain[1..] : word.Plain.TrimStart('f');
        bool isBeside = isFromHome && digits == "=";
        int number = 0;
        if (!isBeside && !int.TryParse(digits, isFromHome ? NumberStyles.AllowLeadingSign : NumberStyles.None, CultureInfo.InvariantCulture, out number))
        {
            return new Fault($"expected a fret from the nut (4) or after ^ from the home clamp (^2), mute or ring, found '{word.Text}'", word.Column);
        }

        if (number == 0 && !isBeside)
        {
            return StringStop.Ringing;
        }

        Fret? fret = isFromHome ? HomeFret.Of(number) is { } home ? setup.FromNut(home) : null : number <= Fret.Last ? Fret.Of(number) : null;
        return fret is { } found && found > Fret.Nut
            ? StringStop.At(found)
            : new Fault($"fret {word.Text} is off the neck, which has frets 1 to {Fret.Last}", word.Column);
    }

    private static Result<Voicing> Put(Voicing now, StringSet strings, StringStop stop, int column)
    {
        Fretting fretting = strings.Strings.Aggregate(now.Fretting, (held, number) => held.With(number, stop));
        return Voicing.Create(now.Setup, fretting, allowBehindClamp: true).TryGet(out Voicing? voicing, out Fault? fault)
            ? voicing
            : fault with { Column = column };
    }

    private static StringStop? StopOf(string word) => s_mute.Contains(word) ? StringStop.Muted : s_ring.Contains(word) ? StringStop.Ringing : null;

    private static bool IsNumber(string word) => word.Length > 0 && char.IsAsciiDigit(word[0]);

    private static bool IsJoiner(string word) => word is "and" or "to" or "," or "-" || word.StartsWith(',');

    private static bool IsFretting(TypedLine line)
    {
        string[] words = Spaced(line).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return words is [['^', ..], ..]
            || (words is [var only] && only.Length >= Tuning.FewestStrings && only.All(IsStopSign))
            || (words.Length >= Tuning.FewestStrings && words.All(word => word is "x" or "X" || int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out _)));
    }

    private static bool IsStopSign(char sign) => sign is 'x' or 'X' || char.IsAsciiDigit(sign);

    private static string Spaced(TypedLine line) => line.Text.Replace(',', ' ').Replace('\t', ' ').TrimEnd();
}
