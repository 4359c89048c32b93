namespace Clampwise.Theory;

/// <summary>How far two chord symbols say the same.</summary>
public enum ChordLikeness
{
    /// <summary>Another chord, or the same over another bass.</summary>
    OtherChord,

    /// <summary>The same chord with an enharmonic root or bass, such as C#m and Dbm.</summary>
    OtherSpelling,

    /// <summary>The same chord, spelled the same.</summary>
    Same,
}
