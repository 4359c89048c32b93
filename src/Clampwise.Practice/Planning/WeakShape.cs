using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>A shape that needs work, with the direction in which it is weakest.</summary>
/// <param name="Item">The shape in its weakest direction.</param>
/// <param name="Weight">How weak; larger is weaker.</param>
/// <param name="Reasons">Why, in words, the weightiest first.</param>
public sealed record WeakShape(PracticeItem Item, double Weight, ImmutableArray<string> Reasons);
