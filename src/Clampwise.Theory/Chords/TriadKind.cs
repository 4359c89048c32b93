namespace Clampwise.Theory;

/// <summary>What stands at the foot of a chord.</summary>
public enum TriadKind
{
    /// <summary>Major third, perfect fifth.</summary>
    Major,

    /// <summary>Minor third, perfect fifth.</summary>
    Minor,

    /// <summary>Minor third, diminished fifth.</summary>
    Diminished,

    /// <summary>Major third, augmented fifth.</summary>
    Augmented,

    /// <summary>Major second in place of the third, perfect fifth.</summary>
    Suspended2,

    /// <summary>Perfect fourth in place of the third, perfect fifth.</summary>
    Suspended4,

    /// <summary>Root and perfect fifth alone.</summary>
    Power,
}
