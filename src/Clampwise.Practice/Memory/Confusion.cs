namespace Clampwise.Practice;

/// <summary>One shape taken for another.</summary>
/// <param name="Asked">What was asked.</param>
/// <param name="Taken">What it was taken for.</param>
public sealed record Confusion(ShapeKey Asked, ShapeKey Taken);
