using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>What lies before the planner on one day.</summary>
internal sealed class DailyWork
{
    // What is asked is remembered so well the next day, answered right or looked up (our judgement).
    private const double RecallAfter = 0.97;
    private const double Horizon = 10;
    private const double Lowness = 0.1;
    private readonly PlanRequest _request;
    private readonly Dictionary<ItemKey, double> _recall;

    public DailyWork(PlanRequest request, PracticeItem[] items)
    {
        _request = request;
        _recall = new Dictionary<ItemKey, double>();
        foreach (PracticeItem item in items)
        {
            if (request.Memory.Recall(item.Key, request.Today) is { } recall)
            {
                _recall[item.Key] = recall;
            }
        }

        Wish = request.Memory.Model.Settings.DesiredRetention;
        Lacking = _recall.Values.Sum(recall => Wish - recall);
        PracticeItem[] fallen = [.. items.Where(item => _recall.TryGetValue(item.Key, out double recall) && recall < Wish && !WasAskedToday(item.Key))
            .OrderByDescending(item => Worth(item)).ThenBy(item => item.Key.ToString(), StringComparer.Ordinal)];
        PracticeItem[] first = [.. fallen.DistinctBy(item => item.Key.Shape)];
        HashSet<ItemKey> firsts = [.. first.Select(item => item.Key)];
        Fallen = [.. first, .. fallen.Where(item => !firsts.Contains(item.Key))];
        Due = [.. Needed()];
        New = [.. NewItems.InOrder(items, request.Memory, request.Today)];
        NewAllowance = NewItems.Allowance(request);
        Rest = [.. items.Where(item => _recall.ContainsKey(item.Key) && !WasAskedToday(item.Key)).OrderBy(item => _recall[item.Key])];
        Contrasts = new Contrasts(request.Memory, request.Today, items, request.MostSetups, rests: true);
    }

    /// <summary>The mean recall wished for.</summary>
    public double Wish { get; }

    /// <summary>How much recall is lacking for the mean to be at the wish, in items; negative if it is above.</summary>
    public double Lacking { get; }

    /// <summary>What has fallen below the wish and was not asked today, what wins most first; each shape in one direction, and then in others, which are warm.</summary>
    public ImmutableArray<PracticeItem> Fallen { get; }

    /// <summary>What of it must be asked to bring the mean back, had one all setups and time.</summary>
    public ImmutableArray<PracticeItem> Due { get; }

    /// <summary>What was never asked, in the order in which to take it in.</summary>
    public ImmutableArray<PracticeItem> New { get; }

    /// <summary>How many new items a day bears.</summary>
    public int NewAllowance { get; }

    /// <summary>All that was asked before and not today, the lowest first.</summary>
    public ImmutableArray<PracticeItem> Rest { get; }

    /// <summary>What is to stand side by side.</summary>
    public Contrasts Contrasts { get; }

    /// <summary>What asking an item wins, in items.</summary>
    public double Gain(PracticeItem item) => RecallAfter - _recall[item.Key];

    /// <summary>How long a question takes, what comes again counted in.</summary>
    public double SecondsOf(PracticeItem item) =>
        Pace.Of(item.Key.Direction, _request.Memory).TotalSeconds * (2 - _recall.GetValueOrDefault(item.Key));

    /// <summary>How long all of them take.</summary>
    public double SecondsOf(IEnumerable<PracticeItem> items) => items.Sum(SecondsOf);

    // What asking an item today wins in recall some days from now, right or missed weighed by their chance; and a little for having fallen low, so
    // that what hardly gets better is not left alone for ever.
    private double Worth(PracticeItem item)
    {
        ItemMemory memory = _request.Memory.Items[item.Key];
        Fsrs model = _request.Memory.Model;
        int days = memory.DaysSince(_request.Today);
        double recall = _recall[item.Key];
        double right = model.Recall(model.Next(memory.Memory, days, Grade.Steady).Stability, Horizon);
        double missed = model.Recall(model.Next(memory.Memory, days, Grade.Missed).Stability, Horizon);
        return (recall * right) + ((1 - recall) * missed) - model.Recall(memory.Memory.Stability, days + Horizon) + (Lowness * (1 - recall));
    }

    private bool WasAskedToday(ItemKey key) => _request.Memory.Items[key].LastDay >= _request.Today;

    private IEnumerable<PracticeItem> Needed()
    {
        double lacking = Lacking;
        foreach (PracticeItem item in Fallen)
        {
            if (lacking <= 0)
            {
                yield break;
            }

            lacking -= Gain(item);
            yield return item;
        }
    }
}
