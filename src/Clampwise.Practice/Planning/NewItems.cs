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

    /// <summary>The new items in the order in which to take them in: likeliest to go right first, one direction of a shape at a time.</summary>
    public static IEnumerable<PracticeItem> InOrder(IEnumerable<PracticeItem> items, MemoryState memory, PracticeDay today)
    {
        var ranked = items.Where(item => !memory.Items.ContainsKey(item.Key))
            .Select((item, order) => (Item: item, Chance: Prediction.Known(item, memory, today), Order: order))
            .OrderByDescending(entry => Math.Round(entry.Chance, 2)).ThenBy(entry => entry.Order)
            .Select(entry => entry.Item).ToArray();
        return Rounds(ranked);
    }
}
