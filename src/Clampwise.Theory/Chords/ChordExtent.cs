namespace Clampwise.Theory;

/// <summary>How far a chord is built up above its triad. From the seventh on, each step implies those beneath it.</summary>
public enum ChordExtent
{
    /// <summary>The triad alone.</summary>
    Triad,

    /// <summary>A major sixth added.</summary>
    Sixth,

    /// <summary>A major sixth and a major ninth added.</summary>
    SixthNinth,

    /// <summary>A seventh.</summary>
    Seventh,

    /// <summary>A seventh and a ninth.</summary>
    Ninth,

    /// <summary>A seventh, a ninth and an eleventh.</summary>
    Eleventh,

    /// <summary>A seventh, a ninth, an eleventh and a thirteenth.</summary>
    Thirteenth,
}
