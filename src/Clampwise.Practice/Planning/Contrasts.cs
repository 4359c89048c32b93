using System.Collections.Immutable;
using Clampwise.Fretboard;

namespace Clampwise.Practice;

/// <summary>
/// Which shapes the player should meet side by side: pairs that were twice taken for one another, in either way, and were not told apart three
/// times running since; those of late first.
/// </summary>
internal sealed class Contrasts
{
    /// <summary>So many pairs come in a session at most.</summary>
    public const int MostPairs = 3;

    // Once may be a slip (our judgement).
    private const int LeastTimes = 2;

    // So many days a pair rests after it came and was told apart no time, once, twice running: day after day shows little (our judgement).
    private static readonly int[] s_restDays = [2, 3, 4];
    private readonly Dictionary<ItemKey, ItemKey> _others = [];
    private readonly HashSet<Setup> _fresh = [];

    /// <summary>The pairs of a day.</summary>
    /// <param name="memory">What is known of the player.</param>
    /// <param name="today">The day.</param>
    /// <param name="items">What may be asked.</param>
    /// <param name="mostSetups">In how many setups the pairs may lie; null for any number.</param>
    /// <param name="rests">True to let a pair rest some days between two times, but for the session after it was confused.</param>
    public Contrasts(MemoryState memory, PracticeDay today, IEnumerable<PracticeItem> items, int? mostSetups = null, bool rests = false)
    {
        Dictionary<ItemKey, PracticeItem> asked = items.Where(item => memory.Items.ContainsKey(item.Key)).ToDictionary(item => item.Key);
        PracticeDay lastSession = memory.Items.Values.Select(item => item.LastDay).DefaultIfEmpty().Max();
        var pairs = ImmutableArray.CreateBuilder<(PracticeItem One, PracticeItem Other)>();
        foreach ((Confusion pair, Direction direction, int apart, PracticeDay last) in Confused(memory, today))
        {
            if (pairs.Count == MostPairs)
            {
                break;
            }

            if (Found(pair, direction, asked) is { } found && (!rests || last >= lastSession || HasRested(found, apart, memory, today)) && _others.Keys.All(key => key.Shape != pair.Asked && key.Shape != pair.Taken)
                && pairs.Select(other => other.One.Drill.Setup).Append(found.One.Drill.Setup).Distinct().Count() <= (mostSetups ?? MostPairs))
            {
                pairs.Add(found);
                _fresh.UnionWith(last >= lastSession ? [found.One.Drill.Setup] : []);
                (_others[found.One.Key], _others[found.Other.Key]) = (found.Other.Key, found.One.Key);
            }
        }

        Pairs = pairs.ToImmutable();
    }

    /// <summary>The pairs, the one most confused of late first; each in the direction in which it was last confused, or in another that both are asked in.</summary>
    public ImmutableArray<(PracticeItem One, PracticeItem Other)> Pairs { get; }

    /// <summary>The setups of pairs that were confused in the last session: they come in the next one, wherever the clamps would go else.</summary>
    public IReadOnlySet<Setup> PressingSetups => _fresh;

    /// <summary>The item to ask beside another; null if it is in no pair.</summary>
    public ItemKey? Of(ItemKey key) => _others.GetValueOrDefault(key);

    /// <summary>True if two shapes were ever taken for one another.</summary>
    public static bool WereConfused(MemoryState memory, ShapeKey one, ShapeKey other) =>
        memory.Confusions.ContainsKey(new Confusion(one, other)) || memory.Confusions.ContainsKey(new Confusion(other, one));

    private static bool HasRested((PracticeItem One, PracticeItem Other) pair, int apart, MemoryState memory, PracticeDay today) =>
        Math.Min(memory.Items[pair.One.Key].DaysSince(today), memory.Items[pair.Other.Key].DaysSince(today)) >= s_restDays[apart];

    private static IEnumerable<(Confusion Pair, Direction Direction, int Apart, PracticeDay Last)> Confused(MemoryState memory, PracticeDay today) => memory.Confusions
        .Where(pair => pair.Value.Open > 0)
        .GroupBy(pair => Ordered(pair.Key))
        .Where(pair => pair.Sum(way => way.Value.Open) >= LeastTimes)
        .OrderByDescending(pair => pair.Sum(way => way.Value.WeightOn(today))).ThenBy(pair => pair.Key.ToString(), StringComparer.Ordinal)
        .Select(pair => (pair.Key, pair.MaxBy(way => way.Value.Last).Value.Direction, Math.Min(pair.Min(way => way.Value.Apart), s_restDays.Length - 1),
            pair.Max(way => way.Value.Last)));

    // Two shapes of one setup can be drawn and played side by side; of two setups the clamp would have to move between them.
    private static (PracticeItem One, PracticeItem Other)? Found(Confusion pair, Direction direction, Dictionary<ItemKey, PracticeItem> asked) =>
        Directions.All.Prepend(direction).Where(way => !way.IsInTime())
            .Select(way => (One: asked.GetValueOrDefault(new ItemKey(pair.Asked, way)), Other: asked.GetValueOrDefault(new ItemKey(pair.Taken, way))))
            .Where(both => both.One is not null && both.Other is not null && both.One.Drill.Setup.Equals(both.Other.Drill.Setup))
            .Select(both => ((PracticeItem, PracticeItem)?)(both.One!, both.Other!)).FirstOrDefault();

    private static Confusion Ordered(Confusion confusion) =>
        string.CompareOrdinal($"{confusion.Asked}", $"{confusion.Taken}") <= 0 ? confusion : new Confusion(confusion.Taken, confusion.Asked);
}
