namespace Clampwise.Theory;

/// <summary>
/// How far a name lies from what a guitarist would write: the lower the sooner. The weights are ours; they say that plain chords come
/// before extended ones, added tones before altered ones, a root in the bass before an inversion, and a plain triad over a foreign
/// bass before a name with several alterations. They were set by these rules with an open data set of guitar chords at hand.
/// </summary>
internal static class ReadingCosts
{
    /// <summary>What it costs that the root is no note of the key's scale.</summary>
    public const int RootOutsideKey = 5;

    private const int MajorThird = 4;
    private const int Fourth = 5;
    private const int Tritone = 6;
    private const int Fifth = 7;
    private const int MajorThirdSpan = 0b1_1111;
    private const int FurtherAlteration = 12;
    private const int Omission = 16;
    private const int ThirdInBass = 12;
    private const int FancyInversion = 5;
    private const int SuspendedInversion = 4;
    private const int EleventhInThirteenth = 10;
    private const int Crowding = 23;

    /// <summary>The cost of a quality with all its tones and its root in the bass.</summary>
    public static int OfQuality(ChordQuality quality) =>
        Triad(quality) + Extent(quality)
        + quality.Altered.Sum(degree => Altered(quality, degree)) + (Math.Max(quality.Altered.Count - 1, 0) * FurtherAlteration)
        + quality.Added.Sum(degree => Added(quality, degree)) + (quality.Omitted.Count * Omission);

    /// <summary>What it costs that tones of the quality are left out.</summary>
    public static int OfMissing(ChordQuality quality, ToneSet sounding)
    {
        // The natural eleventh rubs against the third: a 13 with both is seldom meant.
        bool isRubbing = quality.Extent == ChordExtent.Thirteenth && sounding.Has(Fourth) && sounding.Has(MajorThird);
        int cost = isRubbing ? EleventhInThirteenth : 0;
        foreach (ChordDegree tone in quality.Tones)
        {
            cost += sounding.Has(tone.Semitones) ? 0 : Missing(quality, tone, sounding);
        }

        return cost;
    }

    /// <summary>What it costs that a tone of the chord other than the root is in the bass.</summary>
    public static int OfInversion(ChordQuality quality, ChordDegree bass, ToneSet tones)
    {
        bool isPlain = quality.Altered.IsEmpty && quality.Added.IsEmpty;
        // Two alterations and one of them in the bass: any name with added tones is sooner read.
        bool isTwiceAltered = quality.Altered.Count + (quality.Triad == TriadKind.Augmented ? 1 : 0) > 1;
        return bass.Number switch
        {
            1 => 0,
            // A set that is its own transposition by a tritone has no inversion of its own.
            _ when tones.From(Tritone) == tones => ThirdInBass,
            _ when isTwiceAltered && bass.Alteration != 0 => 22,
            5 => 10,
            3 => ThirdInBass,
            7 or 9 => 16,
            _ => 22,
        } + (bass.Number == 1 || isPlain ? 0 : FancyInversion)
            // Two fourths on the bass are a 7sus4 without its fifth rather than a suspended triad turned over.
            + (bass.Number != 1 && quality is { Triad: TriadKind.Suspended2 or TriadKind.Suspended4, Extent: ChordExtent.Triad } ? SuspendedInversion : 0);
    }

    /// <summary>What it costs that the bass is no tone of the chord above it.</summary>
    public static int OfForeignBass(ChordQuality quality, int bassAboveRoot)
    {
        return (quality.Triad, quality.IsPlainTriad, bassAboveRoot) switch
        {
            (TriadKind.Power, _, _) => 30,
            (_, false, _) => 36,
            // A triad over its own seventh is written as a slash chord sooner than as a seventh chord upside down: D/C, not D7/C.
            (_, true, 10 or 11) => 8,
            _ => 22,
        };
    }

    /// <summary>What it costs that tones crowd: three semitones in a row, or four tones within a major third.</summary>
    public static int OfCrowding(ToneSet sounding)
    {
        for (int start = 0; start < PitchClass.Count; start++)
        {
            ToneSet from = sounding.From(start);
            if (from.Has(0) && ((from.Has(1) && from.Has(2)) || new ToneSet(from.Bits & MajorThirdSpan).Count >= 4))
            {
                return Crowding;
            }
        }

        return 0;
    }

    private static int Triad(ChordQuality quality) => quality.Triad switch
    {
        TriadKind.Suspended4 => quality.Extent == ChordExtent.Seventh ? 16 : 18,
        TriadKind.Suspended2 => 20,
        TriadKind.Diminished => quality.Extent == ChordExtent.Triad ? 18 : 8,
        TriadKind.Augmented => quality.Extent == ChordExtent.Triad ? 18 : 12,
        _ => 0,
    };

    private static int Extent(ChordQuality quality) => quality.Extent switch
    {
        ChordExtent.Sixth => 14,
        ChordExtent.SixthNinth => 20,
        ChordExtent.Seventh => 8,
        ChordExtent.Ninth => 16,
        ChordExtent.Eleventh => 22,
        ChordExtent.Thirteenth => quality.IsMinor ? 28 : 20,
        _ => 0,
    } + (quality is { IsMinor: true, Seventh: SeventhKind.Major } ? 4 : 0)
        + (quality is { Triad: TriadKind.Suspended2 or TriadKind.Suspended4, Seventh: SeventhKind.Major } ? 8 : 0)
        // An add9 over its fifth holds the same tones, and is the name even above a drone on that fifth.
        + (quality is { Triad: TriadKind.Suspended4, Extent: ChordExtent.Sixth } ? 26 : 0)
        + (quality is { Seventh: SeventhKind.Diminished, Extent: > ChordExtent.Seventh } ? 10 : 0);

    private static int Altered(ChordQuality quality, ChordDegree degree) => degree.Number switch
    {
        5 => quality.IsMinor ? 40 : 14,
        9 => 12,
        11 => 13,
        _ => quality.IsMinor ? 34 : 22,
    };

    private static int Added(ChordQuality quality, ChordDegree degree) => (degree.Number, degree.Alteration) switch
    {
        (9, 0) => 11,
        (4, 0) => quality.Extent == ChordExtent.Triad ? 13 : 24,
        (_, 0) => 15,
        (11, _) => 22,
        (9, -1) => 34,
        (9, 1) => 36,
        // Alone it would make a maj7#5 upside down.
        (6, -1) when quality.Added.Count > 1 => 34,
        _ => 48,
    };

    private static int Missing(ChordQuality quality, ChordDegree tone, ToneSet sounding) => tone.Number switch
    {
        5 => quality.Triad is TriadKind.Suspended2 or TriadKind.Suspended4 ? 5 : 3,
        9 when quality.Altered.HasNumber(11) => 8,
        // With its fifth a maj13 without its ninth is a complete m9 turned over; the complete chord is read first.
        9 when quality is { Extent: ChordExtent.Thirteenth, Seventh: SeventhKind.Major } && sounding.Has(Fifth) => 9,
        9 => 2,
        11 => 0,
        3 => 12,
        _ => 4,
    };
}
