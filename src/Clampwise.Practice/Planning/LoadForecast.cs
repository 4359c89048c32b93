using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>What falls due on the coming days if every item is answered when it is due.</summary>
public static class LoadForecast
{
    /// <summary>
    /// How many of the items are due on each of the next days, today first; whatever is overdue counts for today. An item due
    /// within the span is counted once.
    /// </summary>
    public static ImmutableArray<int> DueByDay(IEnumerable<PracticeItem> items, MemoryState memory, PracticeDay today, int days)
    {
        var counts = new int[days];
        foreach (PracticeItem item in items)
        {
            if (memory.Items.TryGetValue(item.Key, out ItemMemory? known))
            {
                int wait = Math.Max(0, known.DueOn(memory.Model) - today);
                if (wait < days)
                {
                    counts[wait]++;
                }
            }
        }

        return [.. counts];
    }
}
