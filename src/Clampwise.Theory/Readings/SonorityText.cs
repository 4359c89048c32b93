namespace Clampwise.Theory;

/// <summary>Names of what sounds, with or without a chord symbol.</summary>
internal static class SonorityText
{
    private static readonly string[] s_intervals =
    [
        "octave", "minor second", "major second", "minor third", "major third", "fourth", "tritone", "fifth", "minor sixth", "major sixth",
        "minor seventh", "major seventh",
    ];

    public static string Name(Sonority sonority) => sonority.Kind switch
    {
        SonorityKind.Silence => "silence",
        SonorityKind.SingleNote => sonority.Pitches.Length == 1 ? $"the note {Lowest(sonority)}" : $"{Lowest(sonority)} in unison",
        SonorityKind.Octaves => $"{sonority.Spell(sonority.First.Bass)} in octaves",
        SonorityKind.Interval => Interval(sonority),
        SonorityKind.Cluster => "cluster " + string.Join(' ', sonority.Pitches.Order().Select(pitch => sonority.Spell(pitch.Class)).Distinct()),
        _ => sonority.First.Symbol!.ToString(),
    };

    private static SpelledPitch Lowest(Sonority sonority) => SpelledPitch.Of(sonority.Pitches[0], sonority.Spell(sonority.Pitches[0].Class));

    private static string Interval(Sonority sonority)
    {
        PitchClass bass = sonority.First.Bass;
        PitchClass other = sonority.Pitches.First(pitch => pitch.Class != bass).Class;
        (NoteName low, NoteName high) = SpellPair(sonority.Spell(bass), other);
        return $"{s_intervals[PitchClass.SemitonesUp(bass, other)]} {low}-{high}";
    }

    // The upper note takes the spelling of the interval's name: the tritone is an augmented fourth.
    private static (NoteName Low, NoteName High) SpellPair(NoteName low, PitchClass other)
    {
        int semitones = PitchClass.SemitonesUp(low.Class, other);
        ChordDegree degree = semitones switch
        {
            1 => ChordDegree.Of(2, -1),
            2 => ChordDegree.Of(2),
            6 => ChordDegree.Of(4, 1),
            _ => ChordSpelling.Degree(ChordQuality.Major, semitones),
        };
        NoteName high = low + degree.Interval;
        return (low, Math.Abs(high.Accidentals) > 1 ? NoteName.Usual(other) : high);
    }
}
