using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>Finds what needs work: by predicted recall, lapses, slow answers and confusions. The weights are our judgement.</summary>
public static class WeakShapes
{
    /// <summary>Less than this is no weakness.</summary>
    public const double LeastWeight = 0.2;

    private const double SlowFrom = 0.7;

    /// <summary>The weak shapes among some items, the weakest first, each shape once.</summary>
    public static ImmutableArray<WeakShape> Find(IEnumerable<PracticeItem> items, MemoryState memory, PracticeDay day, Repertoire repertoire)
    {
        ILookup<ShapeKey, KeyValuePair<Confusion, ConfusionCount>> taken = memory.Confusions.ToLookup(pair => pair.Key.Asked);
        Dictionary<ShapeKey, string> names = NamesOf(taken, repertoire);
        return [.. items
            .Where(item => memory.Items.ContainsKey(item.Key))
            .Select(item => Weigh(item, memory, day, taken[item.Key.Shape], names))
            .Where(weak => weak.Weight >= LeastWeight)
            .OrderByDescending(weak => weak.Weight)
            .ThenBy(weak => weak.Item.Key.ToString(), StringComparer.Ordinal)
            .DistinctBy(weak => weak.Item.Key.Shape)];
    }

    private static WeakShape Weigh(
        PracticeItem item, MemoryState memory, PracticeDay day, IEnumerable<KeyValuePair<Confusion, ConfusionCount>> taken, Dictionary<ShapeKey, string> names)
    {
        ItemMemory known = memory.Items[item.Key];
        double recall = known.RecallOn(day, memory.Model);
        double wished = memory.Model.Settings.DesiredRetention;
        (double Weight, string Words)[] reasons =
        [
            (recall < wished ? 1.5 * (1 - recall) : 0, PlanningWords.RecallFallen(recall)),
            (0.4 * known.FadedMisses, PlanningWords.Missed(known.RecentMisses, Math.Min(8, known.Answers))),
            (known.RecentMisses > 0 ? 0.1 * Math.Min(known.Lapses, 4) : 0, PlanningWords.Lapsed(known.Lapses)),
            (known.Slowness > SlowFrom ? 0.3 * known.Slowness : 0, PlanningWords.Slow(TimesUsual(known, memory.UsualTimeIn(item.Key.Direction)))),
            .. taken.Select(pair => (0.25 * pair.Value.WeightOn(day), PlanningWords.TakenFor(NameOf(pair.Key.Taken, names), pair.Value.Times))),
        ];
        (double Weight, string Words)[] real = [.. reasons.Where(reason => reason.Weight > 0.05).OrderByDescending(reason => reason.Weight)];
        return new WeakShape(item, real.Sum(reason => reason.Weight), [.. real.Select(reason => reason.Words)]);
    }

    private static double TimesUsual(ItemMemory known, UsualTime usual) => Math.Exp(known.Slowness * Math.Sqrt(usual.Variance));

    private static string NameOf(ShapeKey shape, Dictionary<ShapeKey, string> names) => names.GetValueOrDefault(shape, shape.Shape);

    private static Dictionary<ShapeKey, string> NamesOf(ILookup<ShapeKey, KeyValuePair<Confusion, ConfusionCount>> taken, Repertoire repertoire)
    {
        HashSet<ShapeKey> wanted = [.. taken.SelectMany(pairs => pairs.Select(pair => pair.Key.Taken))];
        return repertoire.Items.Where(item => wanted.Contains(item.Key.Shape))
            .DistinctBy(item => item.Key.Shape)
            .ToDictionary(item => item.Key.Shape, item => item.Subject.Voicing.ShapeName);
    }
}
