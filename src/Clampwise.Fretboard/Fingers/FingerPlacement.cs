namespace Clampwise.Fretboard;

/// <summary>One finger in its place: a fret, and the strings that it stops there.</summary>
/// <param name="Finger">Which finger.</param>
/// <param name="Fret">Where.</param>
/// <param name="Strings">The strings that sound from it.</param>
/// <param name="Across">All strings that it lies across, also those that are muted or stopped higher up.</param>
public sealed record FingerPlacement(Finger Finger, Fret Fret, StringSet Strings, StringSet Across)
{
    /// <summary>True if it stops more than one string.</summary>
    public bool IsBarre => Strings.Count > 1;
}
