namespace Clampwise.Practice;

/// <summary>An item with its place in a session.</summary>
/// <param name="Item">What is asked.</param>
/// <param name="Part">Why.</param>
public sealed record PlannedItem(PracticeItem Item, SessionPart Part);
