using System.Collections.Immutable;

namespace Clampwise.Theory;

/// <summary>Which tones a quality holds (MusicXML 4.0, kind-value; the 9 and 11 beneath an 11 or 13 included).</summary>
internal static class ChordTones
{
    private static readonly ChordDegree s_perfectFifth = ChordDegree.Of(5);

    public static ImmutableArray<ChordDegree> Of(ChordQuality quality)
    {
        DegreeSet triad = DegreeSet.Of(ChordDegree.Root) | Third(quality.Triad) | Fifth(quality);
        DegreeSet tones = triad | Upper(quality) | quality.Altered | quality.Added;
        foreach (ChordDegree left in quality.Omitted)
        {
            tones = tones.WithoutNumber(left.Number);
        }

        return [.. tones];
    }

    private static DegreeSet Third(TriadKind triad) => triad switch
    {
        TriadKind.Major or TriadKind.Augmented => DegreeSet.Of(ChordDegree.Of(3)),
        TriadKind.Minor or TriadKind.Diminished => DegreeSet.Of(ChordDegree.Of(3, -1)),
        TriadKind.Suspended2 => DegreeSet.Of(ChordDegree.Of(2)),
        TriadKind.Suspended4 => DegreeSet.Of(ChordDegree.Of(4)),
        _ => default,
    };

    private static DegreeSet Fifth(ChordQuality quality) => quality.Triad switch
    {
        TriadKind.Diminished => DegreeSet.Of(ChordDegree.Of(5, -1)),
        TriadKind.Augmented => DegreeSet.Of(ChordDegree.Of(5, 1)),
        _ => quality.Altered.HasNumber(5) ? default : DegreeSet.Of(s_perfectFifth),
    };

    private static DegreeSet Upper(ChordQuality quality)
    {
        DegreeSet tones = quality.Seventh switch
        {
            SeventhKind.Minor => DegreeSet.Of(ChordDegree.Of(7, -1)),
            SeventhKind.Major => DegreeSet.Of(ChordDegree.Of(7)),
            SeventhKind.Diminished => DegreeSet.Of(ChordDegree.Of(7, -2)),
            _ => default,
        };
        tones = quality.Extent is ChordExtent.Sixth or ChordExtent.SixthNinth ? tones.With(ChordDegree.Of(6)) : tones;
        tones = quality.Extent is ChordExtent.SixthNinth or >= ChordExtent.Ninth ? Natural(9, TriadKind.Suspended2) : tones;
        tones = quality.Extent >= ChordExtent.Eleventh ? Natural(11, TriadKind.Suspended4) : tones;
        return quality.Extent == ChordExtent.Thirteenth ? Natural(13, null) : tones;

        // An altered tone takes the place of the natural one, and a suspended one is there already.
        DegreeSet Natural(int number, TriadKind? inTriad) =>
            quality.Altered.HasNumber(number) || quality.Triad == inTriad ? tones : tones.With(ChordDegree.Of(number));
    }
}
