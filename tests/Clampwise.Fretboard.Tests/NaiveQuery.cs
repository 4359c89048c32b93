using Clampwise.Theory;
using CsCheck;

namespace Clampwise.Fretboard.Tests;

/// <summary>Queries of all kinds, and what they mean for a voicing, word by word.</summary>
internal static class NaiveQuery
{
    private static readonly DegreeSet s_fifth = DegreeSet.Of(ChordDegree.Root, ChordDegree.Of(5));

    public static Gen<VoicingQuery> Queries(Setup setup, int maxFret) => Gen.Select(
        Gens.VoicingsIn(setup, maxFret),
        Gen.Int[0, 8],
        Gen.Int[0, 2],
        Gen.Int[0, (1 << setup.StringCount) - 1],
        Gen.Int[1, 30],
        Gen.Bool).Select(
        (sample, kind, few, bits, limit, flag) => Shape(sample, kind, few, bits, flag) with { Limit = limit, AllowBehindClamp = flag });

    public static bool Fits(VoicingQuery query, Voicing voicing)
    {
        Setup setup = voicing.Setup;
        int[] places = [.. Enumerable.Range(0, setup.StringCount).Where(i => voicing.Strings[i].Pitch is not null)];
        int[] frets = [.. voicing.Fretting.Stops.Where(stop => stop.IsFretted).Select(stop => stop.Finger!.Value.Number)];
        int ringing = voicing.Strings.Count(s => s.Stop.IsRinging);
        return (query.SoundingName is not { } sounding || voicing.Sounding.Accepts(sounding).IsAccepted)
            && (query.ShapeName is not { } shape || voicing.Shape.Accepts(shape).IsAccepted)
            && (query.Degrees is not { } degrees || HasDegrees(degrees, voicing))
            && (query.Top is not { } top || Is(top, voicing.Pitches.Max()))
            && (query.Bass is not { } bass || Is(bass, voicing.Pitches.Min()))
            && ringing >= query.MinRinging && ringing <= query.MaxRinging
            && query.KeepRinging.Strings.All(number => voicing.Fretting[number].IsRinging)
            && places.Length >= query.MinStrings
            && (!query.Unbroken || places[^1] - places[0] + 1 == places.Length)
            && (query.Span is not { } span || frets.Length == 0 || frets.Max() - frets.Min() < span)
            && (query.MaxDifficulty is not { } most || PackedVoicing.ToTenth(Fingering.Of(voicing).Value.Difficulty) <= most)
            && (query.Near is not { } near || VoiceMovement.Between(near, voicing).Total <= (query.MaxMovement ?? int.MaxValue))
            && (query.AllowBehindClamp || Voicing.Create(setup, voicing.Fretting).IsGood);
    }

    private static VoicingQuery Shape(Voicing sample, int kind, int few, int bits, bool flag)
    {
        var strings = StringSet.Of(sample.Setup.Strings.Where(number => ((bits >> (number.Number - 1)) & 1) == 1));
        ChordSymbol? sounding = sample.Sounding.Readings.FirstOrDefault()?.Symbol;
        Pitch lowest = sample.Pitches.IsEmpty ? sample.Setup.GroundPitches[0] : sample.Pitches.Min();
        Pitch highest = sample.Pitches.IsEmpty ? sample.Setup.GroundPitches[^1] : sample.Pitches.Max();
        return kind switch
        {
            0 => new VoicingQuery { SoundingName = sounding },
            1 => new VoicingQuery { ShapeName = sample.Shape.Readings.LastOrDefault()?.Symbol },
            2 => new VoicingQuery { Degrees = new DegreesWanted(s_fifth, flag ? lowest.Class : null) },
            3 => new VoicingQuery
            {
                Bass = new NoteWanted(lowest.Class, flag ? lowest : null),
                Top = new NoteWanted(highest.Class, flag ? null : highest),
            },
            4 => new VoicingQuery { MinRinging = few, MaxRinging = few + 1, MinStrings = 2, Unbroken = flag },
            5 => new VoicingQuery { KeepRinging = strings },
            6 => new VoicingQuery { Span = few + 1, SoundingName = flag ? sounding : null },
            7 => new VoicingQuery { MaxDifficulty = 1.95 + few, MinStrings = 3 },
            _ => new VoicingQuery { Near = sample, MaxMovement = flag ? 6 : null },
        };
    }

    private static bool HasDegrees(DegreesWanted wanted, Voicing voicing) =>
        Enumerable.Range(0, PitchClass.Count).Select(PitchClass.Of).Any(root =>
            (wanted.Root is null || wanted.Root == root)
            && voicing.Pitches.Select(pitch => PitchClass.SemitonesUp(root, pitch.Class)).ToHashSet()
                .SetEquals(wanted.Degrees.Select(degree => degree.Semitones)));

    private static bool Is(NoteWanted wanted, Pitch pitch) =>
        wanted.Exact is { } exact ? exact == pitch : wanted.Class == pitch.Class;
}
