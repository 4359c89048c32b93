using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>A shape that needs work, with the direction in which it is weakest.</summary>
/// <param name="Item">The shape in its weakest direction.</param>
/// <param name="Weight">How likely it is to be missed tomorrow, 0 to 1.</param>
/// <param name="Reasons">Why, in words, the weightiest first.</param>
public sealed record WeakShape(PracticeItem Item, double Weight, ImmutableArray<string> Reasons)
{
    /// <summary>The direction and the first reason in one short line: <c>sounding name: taken for D in 2 of 7</c>.</summary>
    public string Line => $"{Item.Key.Direction.Short()}: {Reasons[0]}";
}
