using Clampwise.Practice;

namespace Clampwise.Simulation;

/// <summary>So many questions a day, always those that were not asked for longest.</summary>
/// <param name="opening">The day on which each item is first asked.</param>
/// <param name="perDay">Questions a day; parts of one add up.</param>
public sealed class RoundRobin(IReadOnlyDictionary<ItemKey, int> opening, double perDay) : Simple(opening)
{
    private readonly Dictionary<ItemKey, int> _last = [];
    private int _today;

    /// <inheritdoc/>
    public override void Saw(Attempt attempt)
    {
        base.Saw(attempt);
        _last[attempt.Item] = _today;
    }

    /// <inheritdoc/>
    protected override IEnumerable<PracticeItem> Due(IReadOnlyList<PracticeItem> asked, int day)
    {
        _today = day;
        // Whole setups in turn: the one whose oldest has waited longest, until the day's number is full.
        return asked.GroupBy(item => item.Drill.Setup.ToString())
            .OrderBy(group => group.Min(item => _last[item.Key])).Take(3)
            .SelectMany(group => group).OrderBy(item => _last[item.Key])
            .Take((int)Math.Floor((day + 1) * perDay) - (int)Math.Floor(day * perDay));
    }
}
