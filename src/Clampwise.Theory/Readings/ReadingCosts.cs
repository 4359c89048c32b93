namespace Clampwise.Theory;

/// <summary>
/// How far a name lies from what a guitarist would write: the lower the sooner. The weights are ours; they say that plain chords come
/// before extended ones, added tones before altered ones, a root in the bass before an inversion, and a plain triad over a foreign
/// bass before a name with several alterations.
/// </summary>
internal static class ReadingCosts
{
    /// <summary>Taken off if the root sounds more than once.</summary>
    public const int DoubledRoot = 8;

    /// <summary>Taken off if the lowest three pitches are a power chord, either way up, and this is its root.</summary>
    public const int RootOfPowerChord = 14;

    /// <summary>Put on if the foreign bass of a name sounds again above.</summary>
    public const int DoubledForeignBass = 18;

    /// <summary>One is put on for so many semitones of the lowest root above the bass.</summary>
    public const int SemitonesForOneOfRootHeight = 6;

    /// <summary>More than the exact pitches can change between two names.</summary>
    public const int MostAdjustment = DoubledRoot + RootOfPowerChord + DoubledForeignBass + 16;

    /// <summary>The cost of a quality with all its tones and its root in the bass.</summary>
    public static int OfQuality(ChordQuality quality) =>
        Triad(quality) + Extent(quality) + quality.Altered.Sum(Altered) + quality.Added.Sum(degree => Added(quality, degree)) + (quality.Omitted.Count * 16);

    /// <summary>What it costs that tones of the quality are left out.</summary>
    public static int OfMissing(ChordQuality quality, ToneSet sounding)
    {
        int cost = 0;
        foreach (ChordDegree tone in quality.Tones)
        {
            cost += sounding.Has(tone.Semitones) ? 0 : Missing(quality, tone);
        }

        return cost;
    }

    /// <summary>What it costs that a tone of the chord other than the root is in the bass.</summary>
    public static int OfInversion(ChordQuality quality, ChordDegree bass) => bass.Number switch
    {
        1 => 0,
        5 => 10,
        3 => 12,
        7 or 9 => 16,
        _ => 22,
    } + (bass.Number != 1 && !(quality.Altered.IsEmpty && quality.Added.IsEmpty) ? 5 : 0);

    /// <summary>What it costs that the bass is no tone of the chord above it.</summary>
    public static int OfForeignBass(ChordQuality quality, int bassAboveRoot)
    {
        bool isPlainTriad = quality is { Triad: TriadKind.Major or TriadKind.Minor, Extent: ChordExtent.Triad }
            && quality.Added.IsEmpty && quality.Altered.IsEmpty;
        return !isPlainTriad ? 32 : bassAboveRoot is 10 or 11 ? 8 : 22;
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
    } + (quality is { IsMinor: true, Seventh: SeventhKind.Major } ? 4 : 0);

    private static int Altered(ChordDegree degree) => degree.Number switch
    {
        5 => 14,
        9 => 12,
        11 => 13,
        _ => 22,
    };

    private static int Added(ChordQuality quality, ChordDegree degree) => (degree.Number, degree.Alteration) switch
    {
        (9, 0) => 11,
        (4, 0) => quality.Extent == ChordExtent.Triad ? 13 : 20,
        (_, 0) => 15,
        (11, _) => 22,
        _ => 44,
    };

    private static int Missing(ChordQuality quality, ChordDegree tone) => tone.Number switch
    {
        5 => 3,
        9 => quality.Altered.HasNumber(11) ? 8 : 2,
        11 => 0,
        3 => 12,
        _ => 4,
    };
}
