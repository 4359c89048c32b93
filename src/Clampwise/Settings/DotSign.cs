namespace Clampwise.Settings;

/// <summary>What stands where fingers are on a fretboard.</summary>
internal enum DotSign
{
    /// <summary>Plain dots.</summary>
    Dots,

    /// <summary>The number of the finger, T for the thumb.</summary>
    Fingers,
}
