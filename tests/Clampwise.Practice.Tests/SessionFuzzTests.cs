using CsCheck;

namespace Clampwise.Practice.Tests;

/// <summary>Any events in any order: whatever happens, nothing is thrown and the log tells the same as the state.</summary>
public class SessionFuzzTests
{
    private static readonly SessionKind[] s_kinds = Enum.GetValues<SessionKind>();

    [Fact]
    public void Any_sequence_of_events_keeps_state_and_log_together()
    {
        int attempts = 0;
        Gen.Select(Gen.Int[0, 2], Gen.Int[1, 1000], Gen.Select(Gen.Int[0, 15], Gen.Double[0, 90]).Array[1, 120]).Holds(
            (kind, seed, happenings) => { attempts += Run(s_kinds[kind], seed, happenings); }, count: 150);
        Assert.True(attempts > 300, $"only {attempts} attempts came about");
    }

    private static int Run(SessionKind kind, int seed, (int What, double Seconds)[] happenings)
    {
        MemoryState memory = Examples.Nothing;
        var player = new Player(SessionState.Of(Plan(kind, seed), default, memory, seed), Examples.World);
        player.Begin();
        TimeSpan practised = TimeSpan.Zero;
        foreach ((int what, double seconds) in happenings)
        {
            player.Wait(seconds);
            player.Do(stamp => Event(what, stamp, player.State));
            player.Show();
            TimeSpan clock = player.State.Clock.At(player.Now.Now);
            Assert.True(clock >= practised);
            practised = clock;
        }

        Attempt[] counted = [.. LogReading.Attempts(player.Log)];
        Assert.Equal(counted.Select(attempt => attempt.Id), player.State.Outcomes.Select(outcome => outcome.Attempt.Id));
        Assert.Equal(counted.Select(attempt => attempt.Grade), player.State.Outcomes.Select(outcome => outcome.Attempt.Grade));
        Assert.Equal(player.Log.Count, player.Log.Select(entry => entry.Id).Distinct().Count());
        Assert.All(counted, attempt => Assert.True(attempt.Thinking >= TimeSpan.Zero && attempt.Thinking <= practised));
        MemoryState rebuilt = MemoryState.Rebuild(player.Log, FsrsSettings.Usual);
        Assert.Equal(rebuilt.Items.OrderBy(p => p.Key.ToString()), player.State.Memory.Items.OrderBy(p => p.Key.ToString()));
        return counted.Length;
    }

    private static SessionPlan Plan(SessionKind kind, int seed)
    {
        var request = new PlanRequest(Examples.Harbour, Examples.Nothing, Examples.Today, seed) { Directions = [.. Directions.All] };
        return kind == SessionKind.Quiz ? QuizPlanner.Plan(request, 8) : DailyPlanner.Plan(request) with { Kind = kind };
    }

    private static SessionEvent Event(int what, Stamp stamp, SessionState state) => what switch
    {
        0 => new SessionEvent.Paused(stamp),
        1 => new SessionEvent.TakenUp(stamp),
        2 => new SessionEvent.FocusLost(stamp),
        3 => new SessionEvent.FocusGained(stamp),
        4 => new SessionEvent.HintAsked(stamp),
        5 => new SessionEvent.AnswerUndone(stamp),
        6 => new SessionEvent.Regraded(stamp, (Grade)(1 + (stamp.Now.Running.Ticks % 4))),
        7 => new SessionEvent.Skipped(stamp, (SkipReason)(stamp.Now.Running.Ticks % 5)),
        8 => new SessionEvent.SoundChanged(stamp, stamp.Now.Running.Ticks % 2 == 0),
        9 => new SessionEvent.SoundRepeated(stamp, TimeSpan.FromSeconds(2)),
        10 => new SessionEvent.Begun(stamp),
        11 or 12 when state.Phase == SessionPhase.Judged => new SessionEvent.WentOn(stamp),
        11 => new SessionEvent.Answered(stamp, new Answer.NotKnown(), TimeSpan.FromSeconds(1)),
        12 or 13 when state.Open is { } open => new SessionEvent.Answered(stamp, Examples.Right(open.Question), TimeSpan.FromSeconds(1)),
        14 when stamp.Now.Running.Ticks % 7 == 0 => new SessionEvent.CutShort(stamp),
        15 => new SessionEvent.WentOn(stamp),
        _ => new SessionEvent.QuestionShown(stamp, TimeSpan.FromSeconds(1)),
    };
}
