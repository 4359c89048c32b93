namespace Clampwise.Theory;

/// <summary>What sort of thing sounds.</summary>
public enum SonorityKind
{
    /// <summary>Nothing sounds.</summary>
    Silence,

    /// <summary>One pitch, on one string or on several.</summary>
    SingleNote,

    /// <summary>One pitch class in several octaves.</summary>
    Octaves,

    /// <summary>A root and its perfect fifth, in any octaves and either way up.</summary>
    PowerChord,

    /// <summary>Two other pitch classes.</summary>
    Interval,

    /// <summary>Three or more pitch classes that a chord symbol names.</summary>
    Chord,

    /// <summary>Three or more pitch classes that no chord symbol names well.</summary>
    Cluster,
}
