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

    /// <summary>The items in order of asking; those that cannot keep their distance to the others are left out.</summary>
    public ImmutableArray<PlannedItem> Order(IEnumerable<PlannedItem> byWorth, IEnumerable<PlannedItem> before)
    {
        List<PlannedItem> waiting = [.. byWorth];
        List<PlannedItem> placed = [.. before];
        List<ItemKey> keys = [.. placed.Select(planned => planned.Item.Key)];
        int start = placed.Count;
        while (Next(waiting, placed, keys) is { } index and >= 0)
        {
            placed.Add(waiting[index]);
            keys.Add(waiting[index].Item.Key);
            waiting.RemoveAt(index);
        }

        return [.. placed.Skip(start)];
    }

    private int Next(List<PlannedItem> waiting, List<PlannedItem> placed, List<ItemKey> keys)
    {
        PlannedItem? last = placed.Count > 0 ? placed[^1] : null;
        ItemKey? contrast = last is null ? null : contrastOf(last.Item.Key);
        int best = -1;
        double least = double.MaxValue;
        int seen = 0;
        for (int index = 0; index < waiting.Count && seen < LookAhead; index++)
        {
            PracticeItem item = waiting[index].Item;
            if (!Spacing.Allows(item.Key, keys, spacing))
            {
                continue;
            }

            double cost = (seen++ * 0.1) + (last is null ? 0 : item.Key == contrast ? -10 : Sameness(item, last.Item));
            (best, least) = cost < least ? (index, cost) : (best, least);
        }

        return best;
    }

    private static double Sameness(PracticeItem one, PracticeItem other) =>
        (one.Key.Direction == other.Key.Direction ? 1 : 0)
        + (one.Family == other.Family ? 1 : 0)
        + (one.Drill.Setup.Equals(other.Drill.Setup) ? 1 : 0);
}
