namespace Clampwise.Charts;

/// <summary>What stands where fingers are on a fretboard.</summary>
public enum DotSign
{
    /// <summary>Plain dots.</summary>
    Dots,

    /// <summary>The number of the finger, T for the thumb.</summary>
    Fingers,

    /// <summary>The degree above the root: R 3 5 b7 9.</summary>
    Degrees,

    /// <summary>The pitch class that sounds, spelled by the name of the chord.</summary>
    Pitches,
}
