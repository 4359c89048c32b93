using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>What lies before the planner on one day: the items sorted into due, weak, new, solid.</summary>
internal sealed class DailyWork
{
    private const int MostEasyDue = 4;
    private const double SolidChance = 0.02;
    private const double PressingShare = 0.85;
    private readonly PlanRequest _request;
    private readonly PracticeItem[] _items;
    private readonly Dictionary<ItemKey, ItemMemory> _known;
    private readonly Contrasts _contrasts;

    public DailyWork(PlanRequest request, PracticeItem[] items)
    {
        (_request, _items) = (request, items);
        _known = items.Select(item => (item.Key, Memory: request.Memory.Items.GetValueOrDefault(item.Key)))
            .Where(pair => pair.Memory is not null).ToDictionary(pair => pair.Key, pair => pair.Memory!);
        Capacity = Math.Max(1, (int)(request.Length / AverageTime()));
        Spacing = Practice.Spacing.For(items.Select(item => item.Key.Shape).Distinct().Count());
        AllDue = [.. items.Where(IsDue).OrderByDescending(item => Worth(item)).ThenBy(item => item.Key.ToString(), StringComparer.Ordinal)];
        PracticeItem[] first = [.. AllDue.DistinctBy(item => item.Key.Shape)];
        Due = [.. first, .. AllDue.Except(first).Where(IsPressing)];
        DueByDay = LoadForecast.DueByDay(_known.Values, request.Memory.Model, request.Today, 7);
        _contrasts = new Contrasts(request.Memory, request.Today);
    }

    /// <summary>Questions that fit into the time.</summary>
    public int Capacity { get; }

    /// <summary>How far apart questions about one shape can stand.</summary>
    public int Spacing { get; }

    /// <summary>All that is due, in the order that saves most recall for the time that it takes.</summary>
    public ImmutableArray<PracticeItem> AllDue { get; }

    /// <summary>
    /// What of it should come today: each shape in one direction, since a second one on a day would be warm and raise no stability;
    /// more directions only where recall has fallen far.
    /// </summary>
    public ImmutableArray<PracticeItem> Due { get; }

    /// <summary>How many are due today and on the coming days.</summary>
    public ImmutableArray<int> DueByDay { get; }

    /// <summary>
    /// What is remembered well and not due, each shape once, the surest first; a little chance keeps sessions from ending alike.
    /// </summary>
    /// <remarks>After weeks away there may be nothing solid: then what is due and remembered best stands in for it.</remarks>
    public PracticeItem[] Easy(double recallFrom, Random random)
    {
        PracticeItem[] solid = [.. _items.Where(item => IsSolid(item, recallFrom))];
        solid = solid.Length > 0 ? solid : [.. Due.Where(item => ContrastOf(item.Key) is null)
            .OrderByDescending(item => RecallOf(_known[item.Key])).Take(MostEasyDue)];
        return [.. solid.OrderByDescending(item => RecallOf(_known[item.Key]) + (SolidChance * random.NextDouble())).DistinctBy(item => item.Key.Shape)];
    }

    /// <summary>What is weak for another reason than being due.</summary>
    public IEnumerable<PracticeItem> Weak() =>
        WeakShapes.Find(_items.Where(item => !IsDue(item) && !WasAskedToday(item)), _request.Memory, _request.Today, _request.Repertoire).Select(weak => weak.Item);

    /// <summary>What was never asked, shapes that are not due first.</summary>
    public IEnumerable<PracticeItem> New()
    {
        HashSet<ShapeKey> due = [.. Due.Select(item => item.Key.Shape)];
        return NewItems.InOrder(_items, _request.Memory, _request.Today).OrderBy(item => due.Contains(item.Key.Shape));
    }

    /// <summary>
    /// What is not due yet, the soonest first, to fill the time; what is due and was left for another day only after it, since an
    /// answer that is warm today would put off the one that counts.
    /// </summary>
    public IEnumerable<PracticeItem> Ahead(IEnumerable<PlannedItem> chosen)
    {
        if (!_request.FillsTime)
        {
            return [];
        }

        HashSet<ItemKey> taken = [.. chosen.Select(planned => planned.Item.Key)];
        return _items.Where(item => _known.ContainsKey(item.Key) && !taken.Contains(item.Key) && !WasAskedToday(item))
            .OrderBy(IsDue).ThenBy(item => RecallOf(_known[item.Key]));
    }

    /// <summary>The same direction of the shape that an item's shape is confused with.</summary>
    public ItemKey? ContrastOf(ItemKey key) => _contrasts.Of(key);

    /// <summary>Each confused item brings its counterpart with it.</summary>
    public IEnumerable<PlannedItem> AddContrasts(IReadOnlyList<PlannedItem> chosen)
    {
        HashSet<ItemKey> taken = [.. chosen.Select(planned => planned.Item.Key)];
        foreach (PlannedItem planned in chosen)
        {
            yield return planned;
            if (ContrastOf(planned.Item.Key) is { } other && _known.ContainsKey(other) && taken.Add(other)
                && _request.Repertoire.Find(other) is { } item && !WasAskedToday(item))
            {
                yield return new PlannedItem(item, SessionPart.Contrast);
            }
        }
    }

    private bool IsSolid(PracticeItem item, double recallFrom) => _known.TryGetValue(item.Key, out ItemMemory? memory)
        && !IsDue(item) && ContrastOf(item.Key) is null && memory.LastDay < _request.Today && memory.LastGrade >= Grade.Steady && RecallOf(memory) >= recallFrom;

    private bool IsPressing(PracticeItem item) =>
        RecallOf(_known[item.Key]) < _request.Memory.Model.Settings.DesiredRetention * PressingShare;

    private bool IsDue(PracticeItem item) =>
        _known.TryGetValue(item.Key, out ItemMemory? memory) && memory.LastDay < _request.Today && memory.DueOn(_request.Memory.Model) <= _request.Today;

    private bool WasAskedToday(PracticeItem item) => _known.TryGetValue(item.Key, out ItemMemory? memory) && memory.LastDay >= _request.Today;

    private double RecallOf(ItemMemory memory) => memory.RecallOn(_request.Today, _request.Memory.Model);

    private double Worth(PracticeItem item) => Benefit.Of(_known[item.Key], _request.Today, _request.Memory.Model)
        / Pace.Of(item.Key.Direction, _request.Memory).TotalSeconds;

    private TimeSpan AverageTime()
    {
        Direction[] directions = [.. _items.Select(item => item.Key.Direction).Distinct()];
        return TimeSpan.FromSeconds(directions.Average(direction => Pace.Of(direction, _request.Memory).TotalSeconds));
    }
}
