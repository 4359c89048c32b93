using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>Which new items a session takes in, and how many.</summary>
internal static class NewItems
{
    private const int DaysAhead = 7;

    // One new item costs about so many questions within the next days, its first sight and its repeat counted in (worked out from
    // the first intervals of the default weights).
    private const double QuestionsEach = 4;
    private const double MostShare = 1.0 / 3;

    /// <summary>As many as the load of the coming days leaves room for.</summary>
    /// <param name="perSession">Questions that fit into a session.</param>
    /// <param name="dueByDay">What is due today and on the coming days.</param>
    public static int Allowance(int perSession, ImmutableArray<int> dueByDay)
    {
        int today = dueByDay[0];
        double load = dueByDay.Take(DaysAhead).Sum() / (double)DaysAhead;
        double free = Math.Min(perSession - today, (perSession - load) * DaysAhead / QuestionsEach);
        return (int)Math.Clamp(free, 0, perSession * MostShare);
    }

    // First one direction of every shape, then a second of each, and so on.
    private static IEnumerable<PracticeItem> Rounds(PracticeItem[] ranked)
    {
        var met = new Dictionary<ShapeKey, int>();
        return ranked
            .Select(item => (Item: item, Round: met[item.Key.Shape] = met.GetValueOrDefault(item.Key.Shape) + 1))
            .ToArray().OrderBy(entry => entry.Round).Select(entry => entry.Item);
    }

    /// <summary>
    /// The new items in the order in which to take them in: likeliest to go right first, one direction of a shape at a time. A shape
    /// that was never met is seen and named first, however the player fares with that: nobody can place or hear what was never shown.
    /// </summary>
    public static IEnumerable<PracticeItem> InOrder(IEnumerable<PracticeItem> items, MemoryState memory, PracticeDay today)
    {
        HashSet<ShapeKey> met = [.. memory.Items.Keys.Select(key => key.Shape)];
        var entries = items.Where(item => !memory.Items.ContainsKey(item.Key))
            .Select((item, order) => (Item: item, Chance: Math.Round(Prediction.Known(item, memory, today), 2), Order: order))
            .ToArray();
        var best = entries.GroupBy(entry => entry.Item.Key.Shape).ToDictionary(shape => shape.Key, shape => shape.Max(entry => entry.Chance));
        bool IsFirstSight(PracticeItem item) => item.Key.Direction == Directions.First && !met.Contains(item.Key.Shape);
        PracticeItem[] ranked = [.. entries
            .OrderByDescending(entry => IsFirstSight(entry.Item) ? best[entry.Item.Key.Shape] : entry.Chance)
            .ThenByDescending(entry => IsFirstSight(entry.Item))
            .ThenBy(entry => entry.Order)
            .Select(entry => entry.Item)];
        return Rounds(ranked);
    }
}
