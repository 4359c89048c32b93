using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>Plans the review of weak shapes: the weakest, beside what they are taken for.</summary>
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

        var contrasts = new Contrasts(request.Memory, request.Today, Beside(weak.Take(count), items));
        HashSet<ItemKey> taken = [.. weak.Take(count).Select(shape => shape.Item.Key)];
        PlannedItem[] chosen = [.. weak.Take(count).SelectMany(shape => WithContrast(shape.Item, contrasts, request, taken))];
        int spacing = Spacing.For(chosen.Select(planned => planned.Item.Key.Shape).Distinct().Count());
        return new SessionPlan(SessionKind.Weak, new Interleaver(spacing, contrasts.Of).Order(chosen), [], null);
    }

    // Only in the direction in which a shape is weak.
    private static IEnumerable<PracticeItem> Beside(IEnumerable<WeakShape> weak, PracticeItem[] items)
    {
        WeakShape[] all = [.. weak];
        HashSet<ItemKey> chosen = [.. all.Select(shape => shape.Item.Key)];
        HashSet<ShapeKey> shapes = [.. chosen.Select(key => key.Shape)];
        return items.Where(item => chosen.Contains(item.Key) || !shapes.Contains(item.Key.Shape));
    }

    private static IEnumerable<PlannedItem> WithContrast(PracticeItem item, Contrasts contrasts, PlanRequest request, HashSet<ItemKey> taken)
    {
        yield return new PlannedItem(item, SessionPart.Weak);
        if (contrasts.Of(item.Key) is { } other && request.Repertoire.Find(other) is { } beside && taken.Add(other))
        {
            yield return new PlannedItem(beside, SessionPart.Contrast);
        }
    }
}
