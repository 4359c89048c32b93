using CsCheck;

namespace Clampwise.Practice.Tests;

/// <summary>The fold of the log: any order, any splitting and any doubling of entries gives one and the same state.</summary>
public class MemoryStateTests
{
    private static readonly DateTimeOffset s_start = new(2026, 3, 1, 18, 0, 0, TimeSpan.Zero);
    private static readonly ShapeKey[] s_shapes = [.. Enumerable.Range(0, 5).Select(i => new ShapeKey("E2 A2 D3 G3 B3 E4 + 2-4@2", $"^ x 0 {i} 0 0 0"))];

    private static readonly Gen<LogEntry[]> s_logs = Gen.Select(
        Gen.Int[0, 4], Gen.Int[0, 8], Gen.Int[1, 4], Gen.Int[0, 3], Gen.Bool, Gen.Double[0.5, 30], Gen.Int[0, 20])
        .Array[0, 60].Select(Log);

    [Fact]
    public void A_rebuild_equals_adding_one_by_one() => s_logs.Holds(log =>
    {
        MemoryState state = MemoryState.Empty(FsrsSettings.Usual);
        foreach (Attempt attempt in log.OfType<Attempt>())
        {
            Assert.True(state.IsNext(attempt));
            state = state.With(attempt);
        }

        AssertSame(MemoryState.Rebuild(log.OfType<Attempt>(), FsrsSettings.Usual), state);
    });

    [Fact]
    public void Order_and_doubling_make_no_difference() => Gen.Select(s_logs, Gen.Int).Holds((log, seed) =>
    {
        LogEntry[] mixed = [.. log, .. log.Take(log.Length / 2)];
        new Random(seed).Shuffle(mixed);
        AssertSame(MemoryState.Rebuild(log, FsrsSettings.Usual), MemoryState.Rebuild(mixed, FsrsSettings.Usual));
    });

    [Fact]
    public void An_undone_attempt_counts_for_nothing() => s_logs.Holds(log =>
    {
        if (log.OfType<Attempt>().LastOrDefault() is { } last)
        {
            LogEntry undo = new AttemptWithdrawn(new EntryId(new Guid(77, 0, 0, new byte[8])), last.At.AddSeconds(1), last.Id);
            AssertSame(
                MemoryState.Rebuild(log.Where(entry => entry != last), FsrsSettings.Usual),
                MemoryState.Rebuild([undo, .. log], FsrsSettings.Usual));
        }
    });

    [Fact]
    public void The_latest_overruling_counts()
    {
        Attempt attempt = Made(0, Direction.HearSayName, Grade.Missed, s_start, "a");
        GradeOverruled To(Grade grade, int minutes) =>
            new(new EntryId(new Guid(minutes, 1, 0, new byte[8])), s_start.AddMinutes(minutes), attempt.Id, grade);

        ItemMemory memory = MemoryState.Rebuild([To(Grade.Instant, 2), attempt, To(Grade.Steady, 1)], FsrsSettings.Usual).Items[attempt.Item];
        Assert.Equal(Fsrs.Default.First(Grade.Instant), memory.Memory);
        Assert.Equal((1, 1), (memory.Answers, memory.RightAnswers));
    }

    [Fact]
    public void A_warm_answer_does_not_raise_stability()
    {
        MemoryState state = MemoryState.Empty(FsrsSettings.Usual).With(Made(0, Direction.HearSayName, Grade.Steady, s_start, "a"));
        Attempt cold = Made(0, Direction.HearSayName, Grade.Steady, s_start.AddDays(3), "b");
        ItemMemory before = state.Items[cold.Item];
        Assert.True(state.With(cold).Items[cold.Item].Memory.Stability > before.Memory.Stability);
        Assert.Equal(before.Memory, state.With(cold with { IsPrimed = true }).Items[cold.Item].Memory);
        Attempt missed = cold with { IsPrimed = true, IsCorrect = false, Grade = Grade.Missed };
        Assert.True(state.With(missed).Items[cold.Item].Memory.Stability < before.Memory.Stability);
    }

    [Fact]
    public void A_sibling_on_the_same_day_primes()
    {
        MemoryState state = MemoryState.Empty(FsrsSettings.Usual).With(Made(0, Direction.HearSayName, Grade.Steady, s_start, "a"));
        var sibling = new ItemKey(s_shapes[0], Direction.NamePlaceShape);
        PracticeDay day = PracticeCalendar.Utc.DayOf(s_start);
        Assert.True(state.IsPrimed(sibling, day));
        Assert.False(state.IsPrimed(sibling, day + 1));
        Assert.False(state.IsPrimed(sibling with { Direction = Direction.HearSayName }, day));
    }

    [Fact]
    public void A_clock_put_back_counts_as_the_same_day()
    {
        Attempt first = Made(0, Direction.HearSayName, Grade.Steady, s_start, "a");
        Attempt earlierDay = Made(0, Direction.HearSayName, Grade.Steady, s_start.AddMinutes(1), "b") with { Day = first.Day + -3 };
        ItemMemory memory = MemoryState.Rebuild([first, earlierDay], FsrsSettings.Usual).Items[first.Item];
        Assert.Equal(first.Day, memory.LastDay);
        Assert.Equal(Fsrs.Default.Next(Fsrs.Default.First(Grade.Steady), 0, Grade.Steady), memory.Memory);
    }

    private static LogEntry[] Log((int Shape, int Direction, int Grade, int Taken, bool IsPrimed, double Seconds, int Hours)[] rows)
    {
        DateTimeOffset at = s_start;
        var log = new List<LogEntry>();
        foreach (var row in rows)
        {
            at = at.AddHours(row.Hours).AddSeconds(1);
            Attempt attempt = Made(row.Shape, (Direction)row.Direction, (Grade)row.Grade, at, $"{log.Count}") with
            {
                IsPrimed = row.IsPrimed,
                Thinking = TimeSpan.FromSeconds(row.Seconds),
                ConfusedWith = row.Grade == 1 ? s_shapes[row.Taken] : null,
                Foreseen = 0.6,
                Family = (ChordFamily)row.Taken,
            };
            log.Add(attempt);
            if (row.Hours % 5 == 0)
            {
                log.Add(new GradeOverruled(Id($"over {log.Count}"), at.AddSeconds(row.Seconds), attempt.Id, Grade.Strained));
            }
        }

        return [.. log];
    }

    private static Attempt Made(int shape, Direction direction, Grade grade, DateTimeOffset at, string id) => new(
        Id(id), at, at.AddSeconds(-5), new ItemKey(s_shapes[shape], direction), DrillId.Parse("quay").Value, default,
        PracticeCalendar.Utc.DayOf(at), grade, grade != Grade.Missed);

    private static EntryId Id(string text)
    {
        byte[] bytes = new byte[16];
        System.Text.Encoding.ASCII.GetBytes(text, bytes);
        return new EntryId(new Guid(bytes));
    }

    private static void AssertSame(MemoryState expected, MemoryState found)
    {
        Assert.Equal(expected.Items.OrderBy(p => p.Key.ToString()), found.Items.OrderBy(p => p.Key.ToString()));
        Assert.Equal(expected.UsualTimes.OrderBy(p => p.Key), found.UsualTimes.OrderBy(p => p.Key));
        Assert.Equal(expected.Skills.OrderBy(p => p.Key.ToString()), found.Skills.OrderBy(p => p.Key.ToString()));
        Assert.Equal(expected.Confusions.OrderBy(p => p.Key.ToString()), found.Confusions.OrderBy(p => p.Key.ToString()));
        Assert.Equal(expected.Correction, found.Correction);
        Assert.Equal((expected.FirstAnswers, expected.UsualRound), (found.FirstAnswers, found.UsualRound));
        Assert.Equal((expected.LatestAt, expected.AttemptCount), (found.LatestAt, found.AttemptCount));
    }
}
