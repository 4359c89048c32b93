namespace Clampwise.Charts;

/// <summary>Where the fret numbers of a fretboard are counted from.</summary>
public enum FretCount
{
    /// <summary>From the nut and from the home clamp.</summary>
    Both,

    /// <summary>From the nut.</summary>
    Nut,

    /// <summary>From the home clamp, where there is one.</summary>
    Clamp,
}
