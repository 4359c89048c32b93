namespace Clampwise.Practice;

/// <summary>One shape taken for another, as figures say it.</summary>
/// <param name="Asked">What was asked.</param>
/// <param name="Taken">What it was taken for.</param>
/// <param name="Times">How often.</param>
/// <param name="Askings">How often it was asked, in all directions.</param>
public sealed record ConfusedShapes(ShapeKey Asked, ShapeKey Taken, int Times, int Askings);
