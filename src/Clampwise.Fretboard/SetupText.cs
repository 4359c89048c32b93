using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>
/// Setup text: a tuning's name or pitches, then clamps: <c>standard + 2-4@2</c>. Without a tuning it is standard. The home clamp is
/// the last partial clamp unless another is marked with <c>*</c>; the mark on the tuning makes the nut home.
/// </summary>
internal static class SetupText
{
    private const char HomeMark = '*';

    public static Result<Setup> Parse(string text)
    {
        (string Word, int Start)[] parts = [.. Parts(text)];
        bool hasTuning = parts[0].Word.Length > 0 && !parts[0].Word.Contains('@', StringComparison.Ordinal);
        bool isNutHome = hasTuning && parts[0].Word.EndsWith(HomeMark);
        string name = isNutHome ? parts[0].Word[..^1] : parts[0].Word;
        Result<Tuning> read = hasTuning ? Tuning.Parse(name) : Tuning.Standard;
        return read.TryGet(out Tuning? tuning, out Fault? fault)
            ? ParseClamps(tuning, parts[(hasTuning ? 1 : 0)..], isNutHome)
            : fault.ShiftedBy(parts[0].Start);
    }

    private static IEnumerable<(string Word, int Start)> Parts(string text)
    {
        int start = 0;
        foreach (string part in text.Split('+'))
        {
            yield return (part.Trim(), start + SpacedWords.Indent(part));
            start += part.Length + 1;
        }
    }

    private static Result<Setup> ParseClamps(Tuning tuning, (string Word, int Start)[] parts, bool isNutHome)
    {
        var clamps = new List<Clamp>();
        Clamp? home = null;
        foreach ((string word, int at) in parts)
        {
            if (!ParseClamp(word, tuning.StringCount).TryGet(out var marked, out Fault? fault))
            {
                return fault.ShiftedBy(at);
            }

            if (marked.IsHome && (isNutHome || home is not null))
            {
                return FretboardWords.TwoHomes(at);
            }

            clamps.Add(marked.Clamp);
            home = marked.IsHome ? marked.Clamp : home;
        }

        if (ClampRules.FirstFault(tuning, [.. clamps]) is { } first)
        {
            return first.Fault with { Column = parts[first.Place].Start + 1 };
        }

        return isNutHome ? Setup.CreateFromNut(tuning, clamps) : Setup.Create(tuning, clamps, home);
    }

    private static Result<(Clamp Clamp, bool IsHome)> ParseClamp(string word, int stringCount)
    {
        int sign = word.IndexOf('@', StringComparison.Ordinal);
        if (sign < 0)
        {
            return FretboardWords.ExpectedClamp(word);
        }

        string strings = word[..sign].Trim();
        Result<StringSet> held = strings.Equals("full", StringComparison.OrdinalIgnoreCase)
            ? StringSet.All(stringCount)
            : StringSet.Parse(strings, stringCount);
        if (!held.TryGet(out StringSet set, out Fault? fault))
        {
            return fault;
        }

        string fret = word[(sign + 1)..].Trim();
        bool isHome = fret.EndsWith(HomeMark);
        bool isNumber = int.TryParse(isHome ? fret[..^1] : fret, System.Globalization.NumberStyles.None, null, out int number);
        return isNumber && number is >= 1 and <= Fret.Last
            ? Clamp.Create(set, Fret.Of(number), stringCount).Select(clamp => (clamp, isHome))
            : FretboardWords.ExpectedFret(fret, sign + 1 + SpacedWords.Indent(word[(sign + 1)..]));
    }

    public static string Print(Setup setup)
    {
        Clamp? usualHome = setup.Clamps.LastOrDefault(clamp => !clamp.IsFull) ?? setup.Clamps.LastOrDefault();
        IEnumerable<string> clamps = setup.Clamps.Select(clamp =>
            clamp == setup.Home && clamp != usualHome ? $"{clamp}{HomeMark}" : $"{clamp}");
        string tuning = setup.Home is null && usualHome is not null ? $"{setup.Tuning}{HomeMark}" : $"{setup.Tuning}";
        return string.Join(" + ", clamps.Prepend(tuning));
    }
}
