using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>
/// Orders questions so that neighbours differ in setup, family and direction (mixing similar kinds beats blocks: Brunmair and
/// Richter 2019, g = .42), shapes keep their distance, and what was confused stands side by side.
/// </summary>
internal sealed class Interleaver(int spacing, Func<ItemKey, ItemKey?> contrastOf)
{
    // How far down the order of worth one may look for a better neighbour.
    private const int LookAhead = 12;

    /// <summary>
    /// The items in order of asking. Where none can keep its distance to the ones before it, the distance shrinks.
    /// </summary>
    public ImmutableArray<PlannedItem> Order(IEnumerable<PlannedItem> byWorth)
    {
        List<PlannedItem> waiting = [.. byWorth];
        List<PlannedItem> placed = [];
        List<ItemKey> keys = [];
        while (waiting.Count > 0)
        {
            int index = -1;
            for (int distance = spacing; index < 0 && distance > 0; distance--)
            {
                index = Next(waiting, placed, keys, distance);
            }

            placed.Add(waiting[index]);
            keys.Add(waiting[index].Item.Key);
            waiting.RemoveAt(index);
        }

        return [.. placed];
    }

    private int Next(List<PlannedItem> waiting, List<PlannedItem> placed, List<ItemKey> keys, int distance)
    {
        PlannedItem? last = placed.Count > 0 ? placed[^1] : null;
        if (last is not null && contrastOf(last.Item.Key) is { } contrast
            && waiting.FindIndex(planned => planned.Item.Key == contrast) is var found and >= 0)
        {
            return found;
        }

        int best = -1;
        double least = double.MaxValue;
        int seen = 0;
        for (int index = 0; index < waiting.Count && seen < LookAhead; index++)
        {
            PracticeItem item = waiting[index].Item;
            if (!Spacing.Allows(item.Key, keys, distance))
            {
                continue;
            }

            // A shape that is to come several times begins early, so that it can keep its distance.
            double cost = (seen++ * 0.1) - waiting.Count(planned => planned.Item.Key.Shape == item.Key.Shape) + (last is null ? 0 : Sameness(item, last.Item)) + WaitFor(item.Key, waiting, keys);
            (best, least) = cost < least ? (index, cost) : (best, least);
        }

        return best;
    }

    // One that is to be followed by its contrast had better wait until that may follow.
    private double WaitFor(ItemKey key, List<PlannedItem> waiting, List<ItemKey> keys) =>
        contrastOf(key) is { } contrast && !Spacing.Allows(contrast, keys, spacing) && waiting.Any(planned => planned.Item.Key == contrast) ? 5 : 0;

    private static double Sameness(PracticeItem one, PracticeItem other) =>
        (one.Key.Direction == other.Key.Direction ? 1 : 0)
        + (one.Family == other.Family ? 1 : 0)
        + (one.Drill.Setup.Equals(other.Drill.Setup) ? 1 : 0);
}
