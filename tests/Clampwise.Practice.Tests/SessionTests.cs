namespace Clampwise.Practice.Tests;

public class SessionTests
{
    private static readonly SessionId s_id = new(new Guid(9, 9, 9, new byte[8]));

    private static Player Daily(MemoryState? memory = null, int seed = 1, PlanRequest? request = null)
    {
        MemoryState known = memory ?? Examples.Nothing;
        SessionPlan plan = DailyPlanner.Plan(request ?? new PlanRequest(Examples.Harbour, known, Examples.Today, seed));
        return new Player(SessionState.Of(plan, s_id, known, seed), Examples.World);
    }

    private static Player Quiz(params Direction[] directions)
    {
        var request = new PlanRequest(Examples.Harbour, Examples.Nothing, Examples.Today, 4) { Directions = [.. directions] };
        SessionPlan plan = QuizPlanner.Plan(request, 10);
        // As if the cards had been shown.
        return new Player(SessionState.Of(plan, s_id, Examples.Nothing, 4) with { CardsShown = [.. plan.All.Select(planned => planned.Item.Key.Shape)] }, Examples.World);
    }

    [Fact]
    public void The_whole_chain_from_drills_to_summary_rebuilds_from_its_log()
    {
        Player player = Daily();
        player.Begin();
        SessionSummary summary = player.PlayOn();
        Assert.InRange(summary.Asked, 15, 60);
        Assert.Equal(summary.Asked, player.Log.OfType<Attempt>().Count());
        Assert.Single(player.Log.OfType<SessionEnded>());
        Assert.Equal(summary.RightAnswers, summary.Outcomes.Count(outcome => outcome.Verdict!.IsCorrect));
        MemoryState rebuilt = MemoryState.Rebuild(player.Log, FsrsSettings.Usual);
        Assert.Equal(rebuilt.Items.OrderBy(p => p.Key.ToString()), player.State.Memory.Items.OrderBy(p => p.Key.ToString()));
        Assert.Equal(rebuilt.Skills.OrderBy(p => p.Key.ToString()), player.State.Memory.Skills.OrderBy(p => p.Key.ToString()));
        Assert.All(WeakShapes.Find(Examples.Harbour.Items, rebuilt, Examples.Today + 1, Examples.Harbour), weak => Assert.True(rebuilt.Items[weak.Item.Key].RecentMisses > 0));
    }

    [Fact]
    public void The_entry_is_stored_before_the_verdict_shows()
    {
        Player player = Quiz(Direction.SeeShapeSayShapeName);
        player.Begin();
        SessionStep step = player.Answer(Examples.Right(player.State.Open!.Question));
        Assert.Collection(
            step.Effects,
            effect => Assert.IsType<Attempt>(Assert.IsType<SessionEffect.Store>(effect).Entry),
            effect => Assert.True(Assert.IsType<SessionEffect.ShowVerdict>(effect).Verdict.IsCorrect));
    }

    [Fact]
    public void Thinking_time_leaves_out_sound_typing_pauses_and_time_away()
    {
        Player player = Quiz(Direction.HearSayName);
        player.Begin();
        player.Wait(1);
        player.Do(stamp => new SessionEvent.Paused(stamp));
        player.Wait(600);
        player.Do(stamp => new SessionEvent.TakenUp(stamp));
        player.Do(stamp => new SessionEvent.FocusLost(stamp));
        player.Wait(900);
        player.Do(stamp => new SessionEvent.FocusGained(stamp));
        player.Do(stamp => new SessionEvent.SoundRepeated(stamp, TimeSpan.FromSeconds(2)));
        player.Answer(Examples.Right(player.State.Open!.Question), thinking: 5, entry: 3);
        // 1 s before the pause and 5 s after it; 4 s of sound, 3 s of typing, 1500 s away: none of them counts.
        Assert.Equal(TimeSpan.FromSeconds(6), player.Log.OfType<Attempt>().Single().Thinking);
        Assert.Equal(TimeSpan.FromSeconds(13), player.State.Clock.At(player.Now.Now));
    }

    [Fact]
    public void A_clock_put_back_changes_no_length()
    {
        Player player = Quiz(Direction.SeeShapeSayShapeName);
        player.Begin();
        player.WallShift = TimeSpan.FromHours(-3);
        player.Answer(Examples.Right(player.State.Open!.Question), thinking: 5, entry: 1);
        Assert.Equal(TimeSpan.FromSeconds(5), player.Log.OfType<Attempt>().Single().Thinking);
    }

    [Fact]
    public void A_paused_session_takes_no_answer()
    {
        Player player = Quiz(Direction.SeeShapeSayShapeName);
        player.Begin();
        player.Do(stamp => new SessionEvent.Paused(stamp));
        SessionStep step = player.Answer(Examples.Right(player.State.Open!.Question));
        Assert.Equal("the clock is stopped: take the session up again first", step.Of<SessionEffect.Refuse>().Single().Fault.Message);
        Assert.Empty(player.Log);
    }

    [Fact]
    public void Hints_come_one_by_one_and_cost_the_grade()
    {
        Player player = Quiz(Direction.SeeShapeSayShapeName);
        player.Begin();
        Question question = player.State.Open!.Question;
        foreach (int left in Enumerable.Range(0, question.Hints.Length).Reverse())
        {
            Assert.Equal(left, player.Do(stamp => new SessionEvent.HintAsked(stamp)).Of<SessionEffect.ShowHint>().Single().Left);
        }

        Assert.Single(player.Do(stamp => new SessionEvent.HintAsked(stamp)).Of<SessionEffect.Refuse>());
        player.Answer(Examples.Right(question), thinking: 0.5);
        Attempt attempt = player.Log.OfType<Attempt>().Single();
        Assert.Equal((Grade.Strained, question.Hints.Length), (attempt.Grade, attempt.Hints));
    }

    [Fact]
    public void A_name_that_does_not_read_costs_nothing()
    {
        Player player = Quiz(Direction.SeeShapeSayShapeName);
        player.Begin();
        SessionStep step = player.Answer(new Answer.Name("h?"));
        Assert.Contains("expected a chord name", step.Of<SessionEffect.Refuse>().Single().Fault.Message, StringComparison.Ordinal);
        Assert.Equal(SessionPhase.Asking, player.State.Phase);
        Assert.Empty(player.Log);
    }

    [Fact]
    public void Not_known_is_a_miss_and_comes_again_in_the_daily_drill()
    {
        Player player = Daily();
        player.Begin();
        ItemKey item = player.State.Open!.Planned.Item.Key;
        player.Answer(new Answer.NotKnown());
        Assert.Equal((Grade.Missed, true), (player.Log.OfType<Attempt>().Single().Grade, player.Log.OfType<Attempt>().Single().DidNotKnow));
        Assert.Contains(player.State.Queue, planned => planned.Item.Key == item && planned.Part == SessionPart.Again);
    }

    [Fact]
    public void An_overruled_grade_counts_in_memory_and_log()
    {
        Player player = Quiz(Direction.SeeShapeSayShapeName);
        player.Begin();
        player.Answer(new Answer.NotKnown());
        ItemKey item = player.State.Open!.Planned.Item.Key;
        SessionStep step = player.Do(stamp => new SessionEvent.Regraded(stamp, Grade.Steady));
        Assert.Equal(Grade.Steady, step.Of<SessionEffect.ShowGrade>().Single().Grade);
        Assert.Equal(Fsrs.Default.First(Grade.Steady), player.State.Memory.Items[item].Memory);
        Assert.Equal(MemoryState.Rebuild(player.Log, FsrsSettings.Usual).Items[item], player.State.Memory.Items[item]);
        Assert.Single(player.State.Outcomes);
    }

    [Fact]
    public void An_undone_answer_is_asked_again_and_leaves_no_trace_in_memory()
    {
        Player player = Daily();
        player.Begin();
        Question question = player.State.Open!.Question;
        int waiting = player.State.Queue.Length;
        player.Answer(new Answer.NotKnown());
        SessionStep step = player.Do(stamp => new SessionEvent.AnswerUndone(stamp));
        Assert.Equal(question, step.Of<SessionEffect.Show>().Single().Question);
        Assert.Empty(player.State.Memory.Items);
        Assert.Empty(MemoryState.Rebuild(player.Log, FsrsSettings.Usual).Items);
        Assert.Equal(waiting, player.State.Queue.Length);
        player.Show();
        player.Answer(Examples.Right(question));
        Attempt[] attempts = [.. player.Log.OfType<Attempt>()];
        Assert.NotEqual(attempts[0].Id, attempts[1].Id);
        Assert.Single(MemoryState.Rebuild(player.Log, FsrsSettings.Usual).Items);
    }

    [Fact]
    public void Without_sound_nothing_is_asked_by_ear()
    {
        Player player = Daily();
        player.Do(stamp => new SessionEvent.SoundChanged(stamp, false));
        player.Begin();
        player.PlayOn();
        Assert.DoesNotContain(player.Log.OfType<Attempt>(), attempt => attempt.Item.Direction.NeedsSound());
        Assert.NotEmpty(player.Log.OfType<Attempt>());
    }

    [Fact]
    public void Sound_that_goes_takes_the_open_question_with_it()
    {
        Player player = Quiz(Direction.HearSayName, Direction.SeeShapeSayShapeName);
        player.Begin();
        while (!player.State.Open!.Question.Direction.NeedsSound())
        {
            player.Answer(new Answer.NotKnown());
            player.GoOn();
        }

        SessionStep step = player.Do(stamp => new SessionEvent.SoundChanged(stamp, false));
        Assert.Single(step.Of<SessionEffect.Notice>());
        Assert.False(player.State.Open!.Question.Direction.NeedsSound());
    }

    [Fact]
    public void A_skipped_question_changes_no_memory()
    {
        Player player = Quiz(Direction.SeeShapeSayShapeName);
        player.Begin();
        ItemKey item = player.State.Open!.Planned.Item.Key;
        player.Do(stamp => new SessionEvent.Skipped(stamp, SkipReason.NotNow));
        Assert.Equal((item, SkipReason.NotNow), (player.Log.OfType<QuestionSkipped>().Single().Item, player.Log.OfType<QuestionSkipped>().Single().Reason));
        Assert.Empty(player.State.Memory.Items);
        Assert.NotEqual(item, player.State.Open!.Planned.Item.Key);
    }

    [Fact]
    public void A_session_of_skips_ends_with_one_entry_of_its_own_identity()
    {
        Player player = Quiz(Direction.SeeShapeSayShapeName);
        player.Begin();
        while (player.State.Phase == SessionPhase.Asking)
        {
            player.Do(stamp => new SessionEvent.Skipped(stamp, SkipReason.NotNow));
        }

        Assert.Equal(player.Log.Count, player.Log.DistinctBy(entry => entry.Id).Count());
        Assert.Single(player.Log.OfType<SessionEnded>());
    }

    [Fact]
    public void Cut_short_it_says_so_and_takes_nothing_more()
    {
        Player player = Daily();
        player.Begin();
        player.Answer(Examples.Right(player.State.Open!.Question));
        SessionSummary summary = player.Do(stamp => new SessionEvent.CutShort(stamp)).Of<SessionEffect.Finish>().Single().Summary;
        Assert.True(summary.WasCutShort);
        Assert.Equal(1, summary.Asked);
        Assert.Single(player.Do(stamp => new SessionEvent.WentOn(stamp)).Of<SessionEffect.Refuse>());
    }

    [Fact]
    public void A_rest_is_offered_after_25_minutes_on_the_clock_and_not_again_at_once()
    {
        Player player = Daily(request: new PlanRequest(Examples.Harbour, Examples.Nothing, Examples.Today, 1) { Length = TimeSpan.FromMinutes(60) });
        player.Begin();
        player.Answer(new Answer.NotKnown(), thinking: 1460);
        player.GoOn();
        Assert.Empty(player.Effects.OfType<SessionEffect.Notice>());
        player.Answer(new Answer.NotKnown(), thinking: 60);
        player.GoOn();
        player.Answer(new Answer.NotKnown());
        player.GoOn();
        Assert.Contains("rest", Assert.Single(player.Effects.OfType<SessionEffect.Notice>()).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tired_hand_gets_no_more_changes_and_a_word_of_care()
    {
        MemoryState met = Examples.Remembered(Examples.Harbour.Items.Where(item => item.Key.Direction == Directions.First).Select((item, index) => Examples.Attempt(item, Grade.Steady, 1, index)));
        var request = new PlanRequest(Examples.Harbour, met, Examples.Today, 1) { Directions = [Direction.ChangeInTime, Direction.SeeShapeSayShapeName], Length = TimeSpan.FromHours(2) };
        Player player = Daily(request: request);
        Assert.Contains(player.State.Queue, planned => planned.Item.Key.Direction == Direction.ChangeInTime);
        player.Begin();
        SessionStep step = player.Do(stamp => new SessionEvent.Skipped(stamp, SkipReason.HandNeedsRest));
        Assert.Contains("clinician", step.Of<SessionEffect.Notice>().Single().Words, StringComparison.Ordinal);
        Assert.DoesNotContain(player.State.Queue, planned => planned.Item.Key.Direction == Direction.ChangeInTime);
    }

    [Fact]
    public void The_same_seed_asks_the_same_questions()
    {
        string[] Run()
        {
            Player player = Daily(seed: 11);
            player.Begin();
            player.PlayOn();
            return [.. player.Effects.OfType<SessionEffect.Show>().Select(show => $"{show.Question.Item} {string.Join(',', show.Question.Choices.Select(c => c.Text))}")];
        }

        Assert.Equal(Run(), Run());
    }
}
