namespace Clampwise.Practice;

/// <summary>A planned item in a snapshot.</summary>
/// <param name="Item">Its key.</param>
/// <param name="Part">Why it is asked.</param>
public sealed record SnapshotItem(ItemKey Item, SessionPart Part)
{
    internal static SnapshotItem Of(PlannedItem planned) => new(planned.Item.Key, planned.Part);

    internal PlannedItem? In(Repertoire repertoire) => repertoire.Find(Item) is { } item ? new PlannedItem(item, Part) : null;
}
