using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>One string of a voicing.</summary>
/// <param name="Number">Which string.</param>
/// <param name="Stop">What is done with it.</param>
/// <param name="Ground">Where it is stopped when no finger is on it.</param>
/// <param name="Pitch">What it sounds; null if muted.</param>
public sealed record SoundingString(StringNumber Number, StringStop Stop, Fret Ground, Pitch? Pitch)
{
    /// <summary>Where the sounding length begins: the finger's fret, else the ground.</summary>
    public Fret StoppedAt => Stop.Finger ?? Ground;

    /// <summary>True if a clamp holds the string.</summary>
    public bool IsHeld => Ground > Fret.Nut;
}
