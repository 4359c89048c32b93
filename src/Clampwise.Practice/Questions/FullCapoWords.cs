using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>The wording of what a hand would be under a full capo.</summary>
internal static class FullCapoWords
{
    /// <summary>
    /// <c>Under a full capo at 2 this hand would be A; string 1 rings from the nut, two frets lower, and is the fourth here.</c>
    /// </summary>
    /// <param name="name">The name that it would have.</param>
    /// <param name="right">The voicing as it is.</param>
    /// <param name="asked">How that reads on the side that is asked.</param>
    /// <param name="lower">The strings that the full capo would raise.</param>
    public static string WouldBe(ChordSymbol name, Voicing right, Sonority asked, StringSet lower)
    {
        int home = right.Setup.HomeFret.Number;
        IEnumerable<string> said = Free(right, asked).Where(free => lower.Contains(free.Sounding.Number))
            .GroupBy(free => (free.Sounding.StoppedAt, free.Sounding.Stop.IsRinging))
            .Select(group => Strings([.. group], home));
        return $"Under a full capo at {home} this hand would be {name}; {string.Join("; ", said)}.";
    }

    private static string Strings((SoundingString Sounding, string Degree)[] strings, int home)
    {
        SoundingString first = strings[0].Sounding;
        bool isOne = strings.Length == 1;
        int from = first.StoppedAt.Number;
        string[] degrees = [.. strings.Select(free => free.Degree)];
        string sound = first.Stop.IsRinging ? "ring" : "sound";
        return $"string{(isOne ? "" : "s")} {Spoken.List([.. strings.Select(free => $"{free.Sounding.Number}")])} {sound}{(isOne ? "s" : "")} "
            + $"from {(from == 0 ? "the nut" : $"fret {from}")}, {Spoken.Count(home - from, "fret")} lower, "
            + $"and {(isOne ? "is" : "are")} {(degrees.Distinct().Count() == 1 ? degrees[0] : Spoken.List(degrees))} here";
    }

    // The highest string first, as strings are numbered.
    private static IEnumerable<(SoundingString Sounding, string Degree)> Free(Voicing right, Sonority asked) => right.Strings
        .Where(sounding => sounding.Pitch is not null)
        .Zip(asked.Readings[0].Tones, (sounding, tone) => (sounding, VoicingWords.Say(tone.Degree)))
        .Reverse();
}
