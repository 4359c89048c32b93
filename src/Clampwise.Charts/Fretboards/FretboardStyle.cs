namespace Clampwise.Charts;

/// <summary>How a fretboard lies on the screen.</summary>
/// <param name="IsUpright">True for the grid of chord diagrams, the nut on top; false for the lie of tablature, the nut at the side.</param>
/// <param name="IsLeftHanded">True to mirror it for a left-handed guitar; only the picture changes.</param>
/// <param name="Count">Where its frets are counted from.</param>
public sealed record FretboardStyle(bool IsUpright = false, bool IsLeftHanded = false, FretCount Count = FretCount.Both)
{
    /// <summary>Lying, right-handed, both counts.</summary>
    public static FretboardStyle Usual { get; } = new();
}
