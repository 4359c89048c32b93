using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>
/// Setup text: a tuning's name or pitches, then clamps: <c>standard + 2-4@2</c>. Without a tuning it is standard. The home clamp is
/// the last partial clamp unless another is marked with <c>*</c>.
/// </summary>
internal static class SetupText
{
    public static Result<Setup> Parse(string text)
    {
        Tuning tuning = Tuning.Standard;
        var clamps = new List<Clamp>();
        Clamp? home = null;
        int start = 0;
        foreach (string part in text.Split('+'))
        {
            int indent = part.Length - part.TrimStart().Length;
            string word = part.Trim();
            bool isFirst = start == 0;
            int at = start + indent;
            start += part.Length + 1;
            if (isFirst && !word.Contains('@', StringComparison.Ordinal) && word.Length > 0)
            {
                if (!Tuning.Parse(word).TryGet(out Tuning? read, out Fault? tuningFault))
                {
                    return tuningFault.ShiftedBy(at);
                }

                tuning = read;
                continue;
            }

            if (!ParseClamp(word, tuning.StringCount).TryGet(out var marked, out Fault? fault))
            {
                return fault.ShiftedBy(at);
            }

            if (marked.IsHome && home is not null)
            {
                return FretboardWords.TwoHomes(at);
            }

            clamps.Add(marked.Clamp);
            home = marked.IsHome ? marked.Clamp : home;
        }

        return Setup.Create(tuning, clamps, home);
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
        bool isHome = fret.EndsWith('*');
        bool isNumber = int.TryParse(isHome ? fret[..^1] : fret, System.Globalization.NumberStyles.None, null, out int number);
        return isNumber && number is >= 1 and <= Fret.Last
            ? (Clamp.Over(set, Fret.Of(number), stringCount), isHome)
            : FretboardWords.ExpectedFret(fret, sign + 1);
    }

    public static string Print(Setup setup)
    {
        Clamp? usualHome = setup.Clamps.LastOrDefault(clamp => !clamp.IsFull) ?? setup.Clamps.LastOrDefault();
        IEnumerable<string> clamps = setup.Clamps.Select(clamp => clamp == setup.Home && clamp != usualHome ? $"{clamp}*" : $"{clamp}");
        return string.Join(" + ", clamps.Prepend(setup.Tuning.ToString()));
    }
}
