namespace Clampwise.Settings;

/// <summary>What stands where fingers are on a fretboard.</summary>
internal enum DotSign
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
