using Clampwise.Practice;

namespace Clampwise.Simulation;

/// <summary>Fixed intervals of 1, 3, 7, 14, 30, 60 days and doubling on, all stretched by one factor.</summary>
/// <param name="opening">The day on which each item is first asked.</param>
/// <param name="stretch">The factor.</param>
/// <param name="fallsToFirst">True if a miss falls to the first step, false for one step back.</param>
public sealed class Ladder(IReadOnlyDictionary<ItemKey, int> opening, double stretch, bool fallsToFirst) : Simple(opening)
{
    private static readonly double[] s_steps = [1, 3, 7, 14, 30, 60];
    private readonly Dictionary<ItemKey, (int Step, int Day)> _steps = [];
    private int _today;

    /// <inheritdoc/>
    public override void Saw(Attempt attempt)
    {
        base.Saw(attempt);
        bool isNew = !_steps.TryGetValue(attempt.Item, out var at);
        if (isNew || at.Day < _today)
        {
            int step = isNew ? 0 : attempt.IsCorrect ? at.Step + 1 : fallsToFirst ? 0 : Math.Max(0, at.Step - 1);
            _steps[attempt.Item] = (step, _today);
        }
    }

    /// <inheritdoc/>
    protected override IEnumerable<PracticeItem> Due(IReadOnlyList<PracticeItem> asked, int day)
    {
        _today = day;
        return asked.Select(item => (item, late: LateBy(item.Key, day))).Where(pair => pair.late >= 0).OrderByDescending(pair => pair.late).Select(pair => pair.item);
    }

    // Relative to its interval.
    private double LateBy(ItemKey item, int day)
    {
        (int step, int last) = _steps[item];
        double interval = stretch * (step < s_steps.Length ? s_steps[step] : s_steps[^1] * Math.Pow(2, step - s_steps.Length + 1));
        return (day - last - Math.Max(1, interval)) / Math.Max(1, interval);
    }
}
