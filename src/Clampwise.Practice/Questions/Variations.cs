using Clampwise.Fretboard;

namespace Clampwise.Practice;

/// <summary>Voicings that lie one or two strings away from a given one: what a slip of a finger would make of it.</summary>
public static class Variations
{
    private static readonly int[] s_slips = [-2, -1, 1, 2];

    /// <summary>Every voicing in which one sounding string sounds otherwise by at most two frets, and which still reads as a chord.</summary>
    public static IEnumerable<Voicing> OfOneString(Voicing voicing) => Changed(voicing).Where(IsChord);

    /// <summary>Every voicing in which two sounding strings sound otherwise, each by at most two frets, and which still reads as a chord.</summary>
    public static IEnumerable<Voicing> OfTwoStrings(Voicing voicing) => TwoChanged(voicing).Where(IsChord);

    /// <summary>The nearest voicing, by strings changed, that satisfies a test; null if none within two strings does.</summary>
    public static Voicing? Nearest(Voicing voicing, Func<Voicing, bool> test) =>
        Changed(voicing).FirstOrDefault(test)
        ?? TwoChanged(voicing).FirstOrDefault(test);

    private static IEnumerable<Voicing> TwoChanged(Voicing voicing) =>
        Changed(voicing).SelectMany(Changed).Where(other => voicing.SoundsOtherwise(other).Count == 2);

    private static bool IsChord(Voicing voicing) => voicing.Sounding.First.Quality is not null;

    private static IEnumerable<Voicing> Changed(Voicing voicing) =>
        from sounding in voicing.Strings
        where sounding.Pitch is not null
        from stop in OtherStops(sounding)
        let made = Voicing.Create(voicing.Setup, voicing.Fretting.With(sounding.Number, stop))
        where made.IsGood
        select made.Value;

    private static IEnumerable<StringStop> OtherStops(SoundingString sounding)
    {
        foreach (int slip in s_slips)
        {
            int fret = sounding.StoppedAt.Number + slip;
            if (fret == sounding.Ground.Number)
            {
                yield return StringStop.Ringing;
            }
            else if (fret is >= 1 and <= Fret.Last)
            {
                yield return StringStop.At(Fret.Of(fret));
            }
        }
    }
}
