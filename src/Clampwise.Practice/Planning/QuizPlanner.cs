using System.Collections.Immutable;
using Clampwise.Fretboard;

namespace Clampwise.Practice;

/// <summary>Plans the name-that-voicing quiz: a run of so many questions in which a voicing is seen or heard, and named.</summary>
public static class QuizPlanner
{
    /// <summary>Twenty questions.</summary>
    public const int UsualCount = 20;

    /// <summary>
    /// The plan: items drawn by chance from the naming directions, those recalled less more often, each once, mixed and spaced. It
    /// is shorter than wished if the drills have too little to ask.
    /// </summary>
    public static SessionPlan Plan(PlanRequest request, int count = UsualCount)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        PracticeItem[] items = [.. request.Items.Where(item => Directions.Naming.Contains(item.Key.Direction))];
        var random = new Random(request.Seed);
        // Weighted drawing without putting back: the largest of u^(1/w) come first (Efraimidis and Spirakis 2006).
        PlannedItem[] drawn = [.. items
            .Select(item => (Item: item, Lot: Math.Pow(random.NextDouble(), 1 / WeightOf(item, request))))
            .OrderByDescending(entry => entry.Lot)
            .Select(entry => new PlannedItem(entry.Item, request.Memory.Items.ContainsKey(entry.Item.Key) ? SessionPart.Ahead : SessionPart.New))];
        // The clamps that the surest lots ask for; what takes another waits for another quiz.
        HashSet<Setup> setups = [.. drawn.Select(planned => planned.Item.Drill.Setup).Distinct().Take(request.MostSetups ?? int.MaxValue)];
        drawn = [.. drawn.Where(planned => setups.Contains(planned.Item.Drill.Setup))];
        int spacing = Spacing.For(items.Select(item => item.Key.Shape).Distinct().Count());
        ImmutableArray<PlannedItem> ordered = new Interleaver(spacing, _ => null).Order(drawn.Take(count));
        return new SessionPlan(SessionKind.Quiz, [.. ordered.Take(count)], [], null);
    }

    private static double WeightOf(PracticeItem item, PlanRequest request) => 1.2 - Prediction.Known(item, request.Memory, request.Today);
}
