using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>Sorts chords into families.</summary>
public static class ChordFamilies
{
    /// <summary>The family of a voicing, by its first reading; the same wherever the rig is moved.</summary>
    public static ChordFamily Of(Voicing voicing) => voicing.Shape.First.Quality is { } quality ? Of(quality) : ChordFamily.Other;

    /// <summary>The family of a quality.</summary>
    public static ChordFamily Of(ChordQuality quality) => quality.Triad switch
    {
        TriadKind.Power => ChordFamily.Power,
        TriadKind.Suspended2 or TriadKind.Suspended4 => ChordFamily.Suspended,
        TriadKind.Diminished => ChordFamily.Diminished,
        TriadKind.Augmented => ChordFamily.Augmented,
        _ when quality.Seventh == SeventhKind.Major => ChordFamily.MajorSeventh,
        _ when quality.Seventh == SeventhKind.Diminished => ChordFamily.Diminished,
        _ when quality.Seventh == SeventhKind.Minor => quality.IsMinor ? ChordFamily.MinorSeventh : ChordFamily.Dominant,
        _ when quality.Extent != ChordExtent.Triad || quality.Added != default => ChordFamily.Added,
        _ => quality.IsMinor ? ChordFamily.Minor : ChordFamily.Major,
    };
}
