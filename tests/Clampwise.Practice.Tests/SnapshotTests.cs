namespace Clampwise.Practice.Tests;

public class SnapshotTests
{
    private static readonly SessionId s_id = new(new Guid(4, 4, 4, new byte[8]));

    private static Player Started()
    {
        SessionPlan plan = DailyPlanner.Plan(new PlanRequest(Examples.Harbour, Examples.Nothing, Examples.Today, 7));
        var player = new Player(SessionState.Of(plan, s_id, Examples.Nothing, 7), Examples.World);
        player.Begin();
        for (int i = 0; i < 5; i++)
        {
            player.Answer(i % 2 == 0 ? Examples.Right(player.State.Open!.Question) : new Answer.NotKnown());
            player.GoOn();
        }

        return player;
    }

    [Fact]
    public void A_session_taken_up_again_goes_on_with_the_open_question_and_its_time()
    {
        Player before = Started();
        before.Wait(3);
        var snapshot = SessionSnapshot.Of(before.State, before.Now.Now, PracticeCalendar.Utc);
        var after = new Player(
            snapshot.Restore(Examples.Harbour, MemoryState.Rebuild(before.Log, FsrsSettings.Usual), LogReading.Attempts(before.Log)), Examples.World);
        after.Begin();
        Assert.Equal(before.State.Open!.Question.Item, after.State.Open!.Question.Item);
        Assert.Equal(before.State.Clock.At(before.Now.Now), after.State.Clock.At(after.Now.Now));
        Assert.Equal(before.State.Queue.AsEnumerable(), after.State.Queue);
        SessionSummary summary = after.PlayOn();
        Assert.Equal(5 + after.Log.OfType<Attempt>().Count(), summary.Asked);
        Assert.Equal(3, summary.Outcomes.Take(5).Count(outcome => outcome.Attempt.IsCorrect));
    }

    [Fact]
    public void A_snapshot_after_a_verdict_does_not_ask_again_what_was_answered()
    {
        Player before = Started();
        before.Answer(Examples.Right(before.State.Open!.Question));
        ItemKey answered = before.State.Open!.Planned.Item.Key;
        var snapshot = SessionSnapshot.Of(before.State, before.Now.Now, PracticeCalendar.Utc);
        Assert.NotEqual(answered, snapshot.Queue[0].Item);
        Assert.Equal(6, snapshot.Answered.Length);
    }

    [Fact]
    public void What_no_drill_has_any_more_is_left_out()
    {
        Player before = Started();
        var snapshot = SessionSnapshot.Of(before.State, before.Now.Now, PracticeCalendar.Utc);
        var less = Repertoire.Of([Examples.Quay with { Directions = [Direction.SeeShapeSayShapeName] }]);
        SessionState restored = snapshot.Restore(less, before.State.Memory, LogReading.Attempts(before.Log));
        Assert.NotEmpty(restored.Queue);
        Assert.All(restored.Queue, planned => Assert.Equal(Direction.SeeShapeSayShapeName, planned.Item.Key.Direction));
    }

}
