using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>
/// Finds what needs work: what is likeliest to be missed tomorrow, by the recall foreseen, by slow answers, late misses, and confusions. What the
/// last evidence says is known is never weak, however long ago that was: it comes due, which is another thing.
/// </summary>
public static class WeakShapes
{
    // On the logistic scale, as they told the truly weakest of simulated learners best.
    private const double SlowWorth = 0.5;
    private const double MissWorth = 0.2;
    private const double ConfusedWorth = 1;
    private const double SlowFrom = 0.7;
    private const double LeastChance = 0.001;

    /// <summary>The weak shapes among some items, the weakest first, each shape once, in the direction in which it is weakest.</summary>
    public static ImmutableArray<WeakShape> Find(IEnumerable<PracticeItem> items, MemoryState memory, PracticeDay day, Repertoire repertoire)
    {
        ILookup<ShapeKey, KeyValuePair<Confusion, ConfusionCount>> taken = memory.Confusions.ToLookup(pair => pair.Key.Asked);
        Dictionary<ShapeKey, int> asked = memory.Items.GroupBy(pair => pair.Key.Shape).ToDictionary(shape => shape.Key, shape => shape.Sum(pair => pair.Value.Answers));
        Dictionary<ShapeKey, string> names = NamesOf(taken, repertoire);
        return [.. items
            .Where(item => memory.Items.TryGetValue(item.Key, out ItemMemory? known) && !IsKnown(known))
            .Select(item => Weigh(item, memory, day, [.. taken[item.Key.Shape]], asked[item.Key.Shape], names))
            .Where(weak => weak.Weight > 1 - memory.Model.Settings.DesiredRetention)
            .OrderByDescending(weak => weak.Weight)
            .ThenBy(weak => weak.Item.Key.ToString(), StringComparer.Ordinal)
            .DistinctBy(weak => weak.Item.Key.Shape)];
    }

    private static bool IsKnown(ItemMemory item) => Known.Is(item) || item.LastGrade >= Grade.Steady;

    private static WeakShape Weigh(
        PracticeItem item, MemoryState memory, PracticeDay day, KeyValuePair<Confusion, ConfusionCount>[] taken, int asked, Dictionary<ShapeKey, string> names)
    {
        ItemMemory known = memory.Items[item.Key];
        double recall = Math.Clamp(memory.Recall(item.Key, day + 1)!.Value, LeastChance, 1 - LeastChance);
        // How often in so many askings, so that what is asked often is not weak for it.
        double confused = taken.Sum(pair => pair.Value.WeightOn(day)) / (1 + asked);
        double logit = Math.Log(recall / (1 - recall)) - (SlowWorth * known.Slowness) - (MissWorth * known.FadedMisses) - (ConfusedWorth * confused);
        return new WeakShape(item, Math.Round(1 / (1 + Math.Exp(logit)), 6), [.. Reasons(item, memory, day, taken, asked, names)]);
    }

    // The confusion first, since it says what to look at.
    private static string[] Reasons(
        PracticeItem item, MemoryState memory, PracticeDay day, KeyValuePair<Confusion, ConfusionCount>[] taken, int asked, Dictionary<ShapeKey, string> names)
    {
        ItemMemory known = memory.Items[item.Key];
        double recall = memory.Recall(item.Key, day + 1)!.Value;
        IEnumerable<string> confusions = taken.OrderByDescending(pair => pair.Value.WeightOn(day)).ThenBy(pair => $"{pair.Key}", StringComparer.Ordinal)
            .Select(pair => PlanningWords.TakenFor(names.GetValueOrDefault(pair.Key.Taken, pair.Key.Taken.Shape), pair.Value.Times, asked));
        (bool Counts, string Words)[] others =
        [
            (known.RecentMisses > 0, PlanningWords.Missed(known.RecentMisses, Math.Min(8, known.Answers))),
            (known.RecentMisses > 0 && known.Lapses > 0, PlanningWords.Lapsed(known.Lapses)),
            (known.Slowness > SlowFrom, PlanningWords.Slow(TimesUsual(known, memory.UsualTimeIn(item.Key.Direction)))),
            (recall < memory.Model.Settings.DesiredRetention, PlanningWords.RecallFallen(recall)),
        ];
        string[] all = [.. confusions, .. others.Where(reason => reason.Counts).Select(reason => reason.Words)];
        return all.Length > 0 ? all : [PlanningWords.NotSteady];
    }

    private static double TimesUsual(ItemMemory known, UsualTime usual) => Math.Exp(known.Slowness * Math.Sqrt(usual.Variance));

    private static Dictionary<ShapeKey, string> NamesOf(ILookup<ShapeKey, KeyValuePair<Confusion, ConfusionCount>> taken, Repertoire repertoire)
    {
        HashSet<ShapeKey> wanted = [.. taken.SelectMany(pairs => pairs.Select(pair => pair.Key.Taken))];
        return repertoire.Items.Where(item => wanted.Contains(item.Key.Shape))
            .DistinctBy(item => item.Key.Shape)
            .ToDictionary(item => item.Key.Shape, item => item.Subject.Voicing.ShapeName);
    }
}
