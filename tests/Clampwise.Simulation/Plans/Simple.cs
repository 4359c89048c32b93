using System.Collections.Immutable;
using Clampwise.Practice;

namespace Clampwise.Simulation;

/// <summary>What all simple plans share: new items come when they came to the program's own planner, and the clamps move twice at most.</summary>
/// <param name="opening">The day on which each item is first asked.</param>
public abstract class Simple(IReadOnlyDictionary<ItemKey, int> opening) : IPlans
{
    private readonly HashSet<ItemKey> _asked = [];

    /// <inheritdoc/>
    public SessionPlan Plan(PlanRequest request, int day)
    {
        PracticeItem[] items = [.. request.Repertoire.Items.Where(item => request.Directions.Contains(item.Key.Direction))];
        PlannedItem[] added = [.. items.Where(item => !_asked.Contains(item.Key) && opening.TryGetValue(item.Key, out int first) && first <= day)
            .Select(item => new PlannedItem(item, SessionPart.New))];
        PlannedItem[] again = [.. Due([.. items.Where(item => _asked.Contains(item.Key))], day).Select(item => new PlannedItem(item, SessionPart.Due))];
        int setups = (request.MostMoves ?? int.MaxValue - 1) + 1;
        // The setups with most to ask, new ones first.
        var chosen = added.Concat(again).GroupBy(planned => planned.Item.Drill.Setup.ToString())
            .OrderByDescending(group => group.Sum(planned => planned.Part == SessionPart.New ? 3 : 1)).Take(setups).ToArray();
        ImmutableArray<PlannedItem> queue = [.. chosen.SelectMany(group => SpreadOut([.. group]))];
        return new SessionPlan(SessionKind.Daily, queue, [], request.Length);
    }

    /// <inheritdoc/>
    public virtual void Saw(Attempt attempt) => _asked.Add(attempt.Item);

    /// <summary>What is asked again on a day, the most wanted first.</summary>
    protected abstract IEnumerable<PracticeItem> Due(IReadOnlyList<PracticeItem> asked, int day);

    // Direction by direction, so that questions about one shape stand apart.
    private static IEnumerable<PlannedItem> SpreadOut(PlannedItem[] planned) => planned
        .GroupBy(one => one.Item.Key.Shape).SelectMany(shape => shape.Select((one, round) => (one, round)))
        .OrderBy(pair => pair.round).Select(pair => pair.one);
}
