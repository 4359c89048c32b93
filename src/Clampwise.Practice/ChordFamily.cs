namespace Clampwise.Practice;

/// <summary>Families of chords that the ear and the hand take for kin, in the usual order of learning (common practice, no source).</summary>
public enum ChordFamily
{
    /// <summary>None of the others, or no chord at all.</summary>
    Other,

    /// <summary>Major triads.</summary>
    Major,

    /// <summary>Minor triads.</summary>
    Minor,

    /// <summary>Root and fifth only.</summary>
    Power,

    /// <summary>The third replaced by a second or a fourth, with or without a seventh.</summary>
    Suspended,

    /// <summary>A triad with one or two tones added and no seventh.</summary>
    Added,

    /// <summary>A major third with a minor seventh, and what is built on it.</summary>
    Dominant,

    /// <summary>A minor third with a minor seventh, and what is built on it.</summary>
    MinorSeventh,

    /// <summary>A major seventh over either third.</summary>
    MajorSeventh,

    /// <summary>Diminished triads and sevenths.</summary>
    Diminished,

    /// <summary>Augmented triads.</summary>
    Augmented,
}
