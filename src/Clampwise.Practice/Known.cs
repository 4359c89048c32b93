namespace Clampwise.Practice;

/// <summary>
/// Known: answered without choices and without help, in the direction meant, on at least two days after the first, and not missed on the last
/// day that it was answered on.
/// </summary>
public static class Known
{
    private const int Days = 2;

    /// <summary>True if an item is known.</summary>
    /// <param name="item">Its memory; null if it was never answered.</param>
    public static bool Is(ItemMemory? item) => item is { FreeDays: >= Days, WasMissedLastDay: false };

    /// <summary>True if a shape is known in a direction.</summary>
    public static bool In(MemoryState memory, ShapeKey shape, Direction direction) =>
        Is(memory.Items.GetValueOrDefault(new ItemKey(shape, direction)));

    /// <summary>True if a shape that is seen is known by its shape name and by its sounding name.</summary>
    public static bool ByBothNames(MemoryState memory, ShapeKey shape) =>
        In(memory, shape, Direction.SeeShapeSayShapeName) && In(memory, shape, Direction.SeeShapeSaySoundingName);
}
