using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using Clampwise.Fretboard;
using Clampwise.Practice;
using Clampwise.Practice.Tests;

namespace Clampwise.Benchmarks;

/// <summary>
/// Practice with 200,000 attempts over 5,000 items, the size that years of daily drills come to. The aims: memory rebuilt from the
/// log under 3 s, a session planned under 150 ms, an answer graded, folded and followed by the next question
/// under 5 ms.
/// </summary>
[MemoryDiagnoser]
[SimpleJob(launchCount: 1, warmupCount: 2, iterationCount: 8)]
public class PracticeBenchmarks
{
    private const int Shapes = 625;
    private const int AttemptCount = 200_000;
    private static readonly DateTimeOffset s_start = new(2022, 1, 1, 18, 0, 0, TimeSpan.Zero);
    private static readonly PracticeDay s_today = PracticeCalendar.Utc.DayOf(s_start.AddDays(1500));
    private readonly ImmutableArray<Direction> _directions = [.. Directions.All.Where(direction => direction != Direction.ChangeInTime)];
    private Repertoire _repertoire = null!;
    private LogEntry[] _log = [];
    private ImmutableArray<Attempt> _answers = [];
    private MemoryState _memory = null!;
    private SessionState _asking = null!;
    private SessionWorld _world = null!;

    [GlobalSetup]
    public void MakeLog()
    {
        _repertoire = Many.Shapes(Shapes, _directions);
        var random = new Random(3);
        _log = [.. Enumerable.Range(0, AttemptCount).Select(number => Made(number, _repertoire.Items[random.Next(_repertoire.Items.Length)], random))];
        _memory = MemoryState.Rebuild(_log, FsrsSettings.Usual);
        _answers = LogReading.Attempts(Enumerable.Range(0, 5000).Select(number => Made(number * 40, _repertoire.Items[random.Next(500)], random)));
        _world = new SessionWorld(_repertoire, PracticeCalendar.Utc, QuestionOptions.Usual);
        SessionState ready = SessionState.Of(Plan_a_session(), default, _memory, 1);
        SessionState open = Session.Step(ready, new SessionEvent.Begun(At(0)), _world).State;
        _asking = Session.Step(open, new SessionEvent.QuestionShown(At(1), TimeSpan.Zero), _world).State;
    }

    [Benchmark]
    public MemoryState Rebuild_memory_from_200000_attempts() => MemoryState.Rebuild(_log, FsrsSettings.Usual);

    [Benchmark]
    public SessionPlan Plan_a_session() => DailyPlanner.Plan(new PlanRequest(_repertoire, _memory, s_today, 1));

    [Benchmark]
    public ImmutableArray<WeakShape> Find_weak_shapes() => WeakShapes.Find(_repertoire.Items, _memory, s_today, _repertoire);

    [Benchmark]
    public SessionState Answer_and_next_question()
    {
        SessionState judged = Session.Step(_asking, new SessionEvent.Answered(At(6), new Answer.NotKnown(), TimeSpan.Zero), _world).State;
        return Session.Step(judged, new SessionEvent.WentOn(At(9)), _world).State;
    }

    [Benchmark]
    public Repertoire Make_the_repertoire_from_frettings() => Repertoire.Of(_repertoire.Drills.Select(drill =>
        Drill.Create(drill.Id, drill.Title, drill.Setup, drill.Voicings.Select(voicing => new DrillVoicing(Voicing.Create(drill.Setup, voicing.Voicing.Fretting).Value))).Value));

    [Benchmark]
    public FitReport Fit_weights_to_5000_answers() => WeightFit.Fit(_answers, FsrsWeights.Default, FsrsSettings.Usual);

    [Benchmark]
    public ProgressReport Report_progress() => ProgressReport.Of(_log, _memory, s_today);

    private static Stamp At(int seconds) =>
        new(new Moment(s_start.AddDays(1500).AddSeconds(seconds), TimeSpan.FromSeconds(seconds)), new EntryId(new Guid(seconds, 7, 7, new byte[8])));

    private static Attempt Made(int number, PracticeItem item, Random random)
    {
        DateTimeOffset at = s_start.AddDays(number * 1500.0 / AttemptCount);
        var grade = (Grade)(random.Next(8) == 0 ? 1 : random.Next(2, 5));
        return new Attempt(
            new EntryId(new Guid(number, 0, 0, new byte[8])), at, at.AddSeconds(-6), item.Key, item.Drill.Id, new SessionId(new Guid(number / 60, 1, 0, new byte[8])),
            PracticeCalendar.Utc.DayOf(at), grade, grade != Grade.Missed)
        {
            Setup = item.Drill.Setup.ToString(),
            Expected = item.Subject.Voicing.ShapeName,
            Answer = item.Subject.Voicing.ShapeName,
            Thinking = TimeSpan.FromSeconds(1 + (random.NextDouble() * 6)),
            Family = item.Family,
            Foreseen = 0.8,
        };
    }
}
