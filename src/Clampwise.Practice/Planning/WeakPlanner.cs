using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>Plans the review of weak shapes: the weakest, beside what they are taken for, and an easy close.</summary>
public static class WeakPlanner
{
    /// <summary>Twelve shapes.</summary>
    public const int UsualCount = 12;

    /// <summary>The plan; empty if nothing is weak.</summary>
    public static SessionPlan Plan(PlanRequest request, int count = UsualCount)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        PracticeItem[] items = [.. request.Items];
        ImmutableArray<WeakShape> weak = WeakShapes.Find(items, request.Memory, request.Today, request.Repertoire);
        if (weak.IsEmpty)
        {
            return new SessionPlan(SessionKind.Weak, [], [], null);
        }

        var work = new DailyWork(request, items);
        PlannedItem[] chosen = [.. work.AddContrasts([.. weak.Take(count).Select(shape => new PlannedItem(shape.Item, SessionPart.Weak))])];
        PlannedItem[] close = [.. work.Easy(0.95, new Random(request.Seed))
            .Where(item => chosen.All(planned => planned.Item.Key.Shape != item.Key.Shape)).Take(1)
            .Select(item => new PlannedItem(item, SessionPart.Close))];
        int spacing = Spacing.For(chosen.Select(planned => planned.Item.Key.Shape).Distinct().Count());
        return new SessionPlan(SessionKind.Weak, new Interleaver(spacing, work.ContrastOf).Order(chosen, []), [.. close], null);
    }
}
