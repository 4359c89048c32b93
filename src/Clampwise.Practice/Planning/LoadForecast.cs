using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>What falls due on the coming days if every item is answered when it is due.</summary>
public static class LoadForecast
{
    /// <summary>
    /// How many of the items are due on each of the next days, today first; whatever is overdue counts for today. An item due
    /// within the span is counted once.
    /// </summary>
    public static ImmutableArray<int> DueByDay(IEnumerable<ItemMemory> items, Fsrs model, PracticeDay today, int days)
    {
        var counts = new int[days];
        foreach (ItemMemory item in items)
        {
            int wait = Math.Max(0, item.DueOn(model) - today);
            if (wait < days)
            {
                counts[wait]++;
            }
        }

        return [.. counts];
    }
}
