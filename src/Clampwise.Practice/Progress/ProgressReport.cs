using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>All figures of progress, from the log and the memory folded from it. Days without practice are no figure: nobody is in debt.</summary>
public sealed record ProgressReport
{
    private const int WeekDays = 7;

    /// <summary>Each day practised, the earliest first.</summary>
    public required ImmutableArray<DayFigures> Days { get; init; }

    /// <summary>Each week from the first practised to this one, the earliest first; those without practice stand as gaps, with no figure.</summary>
    public required ImmutableArray<WeekFigures> Weeks { get; init; }

    /// <summary>Each setup practised, by setup text, the most asked first.</summary>
    public required ImmutableArray<GroupFigures> BySetup { get; init; }

    /// <summary>Each direction practised, by its title, in the order of directions.</summary>
    public required ImmutableArray<GroupFigures> ByDirection { get; init; }

    /// <summary>What comes due on the next days, today first.</summary>
    public required ImmutableArray<DueDay> Due { get; init; }

    /// <summary>What was answered for what, in all naming and placing directions together.</summary>
    public required ConfusionMatrix Confusions { get; init; }

    /// <summary>Which shape was taken for which, the most often first.</summary>
    public required ImmutableArray<ConfusedShapes> ByShape { get; init; }

    /// <summary>What was still had on later days, in all.</summary>
    public required StillHad StillHad { get; init; }

    /// <summary>The recall wished for, 0 to 1.</summary>
    public required double Wish { get; init; }

    /// <summary>Questions answered in all.</summary>
    public int Asked => Days.Sum(day => day.Asked);

    /// <summary>Answered right in all.</summary>
    public int RightAnswers => Days.Sum(day => day.RightAnswers);

    /// <summary>Time practised in all.</summary>
    public TimeSpan Practised => Days.Aggregate(TimeSpan.Zero, (sum, day) => sum + day.Practised);

    /// <summary>The report of a log.</summary>
    /// <param name="entries">The log.</param>
    /// <param name="memory">The memory folded from it.</param>
    /// <param name="today">Today.</param>
    /// <param name="daysAhead">How many days of what comes due, today counted in.</param>
    public static ProgressReport Of(IEnumerable<LogEntry> entries, MemoryState memory, PracticeDay today, int daysAhead = 30)
    {
        LogEntry[] all = [.. entries];
        ImmutableArray<Attempt> attempts = LogReading.Attempts(all);
        ImmutableArray<Attempt> later = FirstOfLaterDays(attempts);
        ImmutableArray<DayFigures> days = DaysOf(attempts, PractisedTime.ByDay(all));
        Attempt[] named = [.. attempts.Where(attempt => attempt.Item.Direction is not (Direction.HearTwoCompare or Direction.ChangeInTime))];
        return new ProgressReport
        {
            Days = days,
            Weeks = WeeksOf(later, days, today),
            StillHad = StillHad.Among(later),
            Wish = memory.Model.Settings.DesiredRetention,
            ByShape = ByShapeOf(memory),
            BySetup = [.. attempts.GroupBy(attempt => attempt.Setup).Select(group => Group(group.Key, group, memory, today)).OrderByDescending(group => group.Asked)],
            ByDirection = [.. attempts.GroupBy(attempt => attempt.Item.Direction).OrderBy(group => group.Key)
                .Select(group => Group(group.Key.Title(), group, memory, today))],
            Due = DueOf(memory, today, daysAhead),
            Confusions = ConfusionMatrix.Of(named),
        };
    }

    private static ImmutableArray<DayFigures> DaysOf(ImmutableArray<Attempt> attempts, IReadOnlyDictionary<PracticeDay, TimeSpan> practised) =>
        [.. attempts.GroupBy(attempt => attempt.Day).OrderBy(group => group.Key).Select(group => new DayFigures(
            group.Key, group.Count(), group.Count(attempt => attempt.IsCorrect), practised.GetValueOrDefault(group.Key)))];

    private static ImmutableArray<WeekFigures> WeeksOf(ImmutableArray<Attempt> later, ImmutableArray<DayFigures> days, PracticeDay today)
    {
        if (days.IsEmpty)
        {
            return [];
        }

        ILookup<PracticeDay, Attempt> again = later.ToLookup(attempt => MondayOf(attempt.Day));
        ILookup<PracticeDay, DayFigures> practised = days.ToLookup(day => MondayOf(day.Day));
        PracticeDay first = MondayOf(days[0].Day);
        PracticeDay last = MondayOf(today > days[^1].Day ? today : days[^1].Day);
        return [.. Enumerable.Range(0, ((last - first) / WeekDays) + 1).Select(week => first + (week * WeekDays)).Select(monday => new WeekFigures(
            monday,
            practised[monday].Sum(day => day.Asked),
            practised[monday].Sum(day => day.RightAnswers),
            Mean(again[monday].Select(attempt => attempt.IsCorrect ? 1.0 : 0)),
            Mean(again[monday].Where(attempt => attempt.Foreseen is not null).Select(attempt => attempt.Foreseen!.Value)),
            practised[monday].Count(),
            practised[monday].Aggregate(TimeSpan.Zero, (sum, day) => sum + day.Practised)))];
    }

    // What was asked earlier on the same day is warm, and tells nothing of recall.
    private static ImmutableArray<Attempt> FirstOfLaterDays(ImmutableArray<Attempt> attempts)
    {
        var last = new Dictionary<ItemKey, PracticeDay>();
        var later = ImmutableArray.CreateBuilder<Attempt>();
        foreach (Attempt attempt in attempts)
        {
            if (!last.TryGetValue(attempt.Item, out PracticeDay before))
            {
                last[attempt.Item] = attempt.Day;
            }
            else if (attempt.Day > before)
            {
                last[attempt.Item] = attempt.Day;
                later.Add(attempt);
            }
        }

        return later.ToImmutable();
    }

    private static ImmutableArray<ConfusedShapes> ByShapeOf(MemoryState memory)
    {
        var askings = memory.Items.GroupBy(pair => pair.Key.Shape).ToDictionary(shape => shape.Key, shape => shape.Sum(pair => pair.Value.Answers));
        return [.. memory.Confusions.Select(pair => new ConfusedShapes(pair.Key.Asked, pair.Key.Taken, pair.Value.Times, askings.GetValueOrDefault(pair.Key.Asked)))
            .OrderByDescending(pair => pair.Times).ThenBy(pair => $"{pair.Asked} {pair.Taken}", StringComparer.Ordinal)];
    }

    private static GroupFigures Group(string name, IEnumerable<Attempt> attempts, MemoryState memory, PracticeDay today)
    {
        Attempt[] all = [.. attempts];
        ItemKey[] items = [.. all.Select(attempt => attempt.Item).Distinct().Where(memory.Items.ContainsKey)];
        TimeSpan[] times = [.. all.Where(attempt => attempt is { IsCorrect: true, Hints: 0 } && attempt.Thinking > TimeSpan.Zero).Select(attempt => attempt.Thinking).Order()];
        return new GroupFigures(
            name,
            all.Length,
            all.Count(attempt => attempt.IsCorrect),
            items.Length,
            items.Count(item => memory.Items[item].DueOn(memory.Model) <= today),
            Mean(items.Select(item => memory.Recall(item, today + 1)!.Value)) ?? 0,
            times.Length > 0 ? times[times.Length / 2] : null);
    }

    private static ImmutableArray<DueDay> DueOf(MemoryState memory, PracticeDay today, int daysAhead) =>
        [.. LoadForecast.DueByDay(memory.Items.Values, memory.Model, today, daysAhead).Select((count, ahead) => new DueDay(today + ahead, count))];

    private static PracticeDay MondayOf(PracticeDay day) => day + -(((int)day.Date.DayOfWeek + WeekDays - 1) % WeekDays);

    private static double? Mean(IEnumerable<double> values)
    {
        double[] all = [.. values];
        return all.Length > 0 ? all.Average() : null;
    }
}
