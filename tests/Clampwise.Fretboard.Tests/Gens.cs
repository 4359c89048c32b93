using Clampwise.Theory;
using CsCheck;

namespace Clampwise.Fretboard.Tests;

/// <summary>Any tuning of 4 to 8 strings, any clamps that the rules allow, any fretting that they allow.</summary>
internal static class Gens
{
    public static readonly Gen<Tuning> Tunings = Gen.Int[Tuning.FewestStrings, StringNumber.Most].SelectMany(count =>
        Gen.Select(Gen.Int[12, 45], Gen.Int[0, 7].Array[count - 1]).Select((lowest, steps) => Build(lowest, steps)));

    public static readonly Gen<Setup> Setups = Tunings.SelectMany(tuning =>
        ClampsFor(tuning).Array[0, 4].SelectMany(clamps => Gen.Bool.Select(fromNut => Allowed(tuning, clamps, fromNut))));

    public static Gen<Voicing> VoicingsIn(Setup setup, int highestFret = Fret.Last) =>
        Gen.Int[-1, highestFret].Array[setup.StringCount].Select(frets => Fitted(setup, frets));

    public static readonly Gen<Voicing> Voicings = Setups.SelectMany(setup => VoicingsIn(setup));

    private static Tuning Build(int lowest, int[] steps)
    {
        var midi = new List<int> { lowest };
        foreach (int step in steps)
        {
            midi.Add(midi[^1] + step);
        }

        return Tuning.Create(midi.Select(Pitch.FromMidi)).Value;
    }

    private static Gen<Clamp> ClampsFor(Tuning tuning) =>
        Gen.Select(Gen.Int[1, (1 << tuning.StringCount) - 1], Gen.Int[1, 12], Gen.Int[0, 3]).Select((bits, fret, kind) =>
            Clamp.Create(kind == 0 ? StringSet.All(tuning.StringCount) : Strings(bits), Fret.Of(fret), tuning.StringCount).Value);

    private static StringSet Strings(int bits) =>
        StringSet.Of(Enumerable.Range(1, StringNumber.Most).Where(number => ((bits >> (number - 1)) & 1) == 1).Select(StringNumber.Of));

    // Clamps that the rules refuse beside those before them are left out.
    private static Setup Allowed(Tuning tuning, Clamp[] clamps, bool fromNut)
    {
        var kept = new List<Clamp>();
        foreach (Clamp clamp in clamps)
        {
            if (Setup.Create(tuning, [.. kept, clamp]).IsGood)
            {
                kept.Add(clamp);
            }
        }

        return fromNut ? Setup.CreateFromNut(tuning, kept).Value : Setup.Create(tuning, kept).Value;
    }

    private static Voicing Fitted(Setup setup, int[] frets)
    {
        var stops = frets.Select((fret, i) =>
            fret < 0 ? StringStop.Muted : fret <= setup.GroundAt(i).Number ? StringStop.Ringing : StringStop.At(Fret.Of(fret)));
        return Voicing.Create(setup, Fretting.Of([.. stops]), allowBehindClamp: true).Value;
    }
}
