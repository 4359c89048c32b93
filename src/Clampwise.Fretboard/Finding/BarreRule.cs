namespace Clampwise.Fretboard;

/// <summary>How many strings a finger may stop when fingers are counted.</summary>
public enum BarreRule
{
    /// <summary>
    /// One finger may lie across strings at the lowest fretted fret: the fretted strings, less the longest run of strings at that fret,
    /// plus one. A run is not broken by muted strings or by strings stopped at that fret or above, and is broken by any other.
    /// </summary>
    One,

    /// <summary>Any finger may lie across a run of strings at its fret.</summary>
    Any,
}
