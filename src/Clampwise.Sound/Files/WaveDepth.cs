namespace Clampwise.Sound.Files;

/// <summary>How samples are stored in a WAV file.</summary>
public enum WaveDepth
{
    /// <summary>16-bit whole numbers.</summary>
    Bits16,

    /// <summary>24-bit whole numbers.</summary>
    Bits24,

    /// <summary>32-bit floating point: exactly what is played.</summary>
    Float,
}
