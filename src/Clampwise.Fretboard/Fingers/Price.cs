namespace Clampwise.Fretboard;

/// <summary>One thing that counts for or against a voicing, with its weight.</summary>
/// <param name="Words">What it is: <c>three fingers</c>, <c>barre across five strings</c>.</param>
/// <param name="Points">How much it counts; more is harder. Below zero it counts in favour.</param>
public sealed record Price(string Words, double Points);
