namespace Clampwise.Theory;

/// <summary>Sounding pitches as a reader sees them: the lowest, and which semitones above it sound.</summary>
internal readonly ref struct HeardTones
{
    private HeardTones(ReadOnlySpan<Pitch> pitches, Pitch lowest, ToneSet fromBass)
    {
        Pitches = pitches;
        Lowest = lowest;
        FromBass = fromBass;
    }

    /// <summary>The pitches in any order.</summary>
    public ReadOnlySpan<Pitch> Pitches { get; }

    /// <summary>The lowest pitch, if there is any.</summary>
    public Pitch Lowest { get; }

    /// <summary>The pitch classes counted from the lowest pitch; empty in silence.</summary>
    public ToneSet FromBass { get; }

    public PitchClass Bass => Lowest.Class;

    public static HeardTones Of(ReadOnlySpan<Pitch> pitches)
    {
        if (pitches.IsEmpty)
        {
            return default;
        }

        int lowest = Pitch.HighestMidi;
        uint classes = 0;
        foreach (Pitch pitch in pitches)
        {
            lowest = Math.Min(lowest, pitch.Midi);
            classes |= 1u << (pitch.Midi % PitchClass.Count);
        }

        return new HeardTones(pitches, Pitch.FromMidi(lowest), new ToneSet((int)classes).From(lowest % PitchClass.Count));
    }
}
