using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>All figures of progress, from the log and the memory folded from it. Days without practice are no figure: nobody is in debt.</summary>
public sealed record ProgressReport
{
    private const int WeekDays = 7;

    /// <summary>Each day practised, the earliest first.</summary>
    public required ImmutableArray<DayFigures> Days { get; init; }

    /// <summary>Each week practised, the earliest first.</summary>
    public required ImmutableArray<WeekFigures> Weeks { get; init; }

    /// <summary>Each setup practised, by setup text, the most asked first.</summary>
    public required ImmutableArray<GroupFigures> BySetup { get; init; }

    /// <summary>Each direction practised, by its title, in the order of directions.</summary>
    public required ImmutableArray<GroupFigures> ByDirection { get; init; }

    /// <summary>What comes due on the next days, today first.</summary>
    public required ImmutableArray<DueDay> Due { get; init; }

    /// <summary>What was answered for what, in all naming and placing directions together.</summary>
    public required ConfusionMatrix Confusions { get; init; }

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
        ImmutableArray<DayFigures> days = DaysOf(attempts, PractisedTime.ByDay(all));
        Attempt[] named = [.. attempts.Where(attempt => attempt.Item.Direction is not (Direction.HearTwoCompare or Direction.ChangeInTime))];
        return new ProgressReport
        {
            Days = days,
            Weeks = WeeksOf(attempts, days),
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

    private static ImmutableArray<WeekFigures> WeeksOf(ImmutableArray<Attempt> attempts, ImmutableArray<DayFigures> days)
    {
        HashSet<ItemKey> met = [];
        ILookup<PracticeDay, Attempt> again = attempts.Where(attempt => !met.Add(attempt.Item)).ToLookup(attempt => MondayOf(attempt.Day));
        return [.. days.GroupBy(day => MondayOf(day.Day)).Select(week => new WeekFigures(
            week.Key,
            week.Sum(day => day.Asked),
            week.Sum(day => day.RightAnswers),
            Mean(again[week.Key].Select(attempt => attempt.IsCorrect ? 1.0 : 0)),
            Mean(again[week.Key].Where(attempt => attempt.Foreseen is not null).Select(attempt => attempt.Foreseen!.Value)),
            week.Count(),
            week.Aggregate(TimeSpan.Zero, (sum, day) => sum + day.Practised)))];
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
