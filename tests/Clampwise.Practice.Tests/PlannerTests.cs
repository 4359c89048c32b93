using System.Collections.Immutable;

namespace Clampwise.Practice.Tests;

public class PlannerTests
{
    private static PlanRequest Request(MemoryState memory, int seed = 1) => new(Examples.Harbour, memory, Examples.Today, seed);

    private static MemoryState Half(int daysAgo) => Examples.Remembered(
        Examples.Harbour.Items.Where((_, index) => index % 2 == 0).SelectMany((item, index) => new[]
        {
            Examples.Attempt(item, Grade.Steady, daysAgo + 6, index),
            Examples.Attempt(item, (Grade)(2 + (index % 3)), daysAgo + (index % 5), index),
        }));

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 12)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Siblings_stand_apart_in_a_plan_and_in_its_session_while_anything_can_step_between(int seed)
    {
        MemoryState memory = Half(10 + seed);
        SessionPlan plan = DailyPlanner.Plan(Request(memory, seed));
        AssertSpaced([.. plan.Items.Select(planned => planned.Item.Key)]);
        var player = new Player(SessionState.Of(plan, default, memory, seed), Examples.World);
        player.Begin();
        var random = new Random(seed);
        while (player.State.Phase == SessionPhase.Asking)
        {
            SessionState before = player.State;
            player.Answer(random.NextDouble() < 0.7 ? Examples.Right(before.Open!.Question) : new Answer.NotKnown());
            ImmutableArray<PlannedItem> waiting = player.State.Queue;
            player.GoOn();
            // A shape comes sooner than at its distance only where nothing that waits could keep its own, and straight after itself only
            // where nothing else waits; what is told apart stands side by side on purpose.
            if (player.State.Open is { Planned: { Part: not (SessionPart.Contrast or SessionPart.Close) } next } && !Spacing.Allows(next.Item.Key, before.Asked, before.Spacing))
            {
                Assert.DoesNotContain(waiting, planned => Spacing.Allows(planned.Item.Key, before.Asked, before.Spacing));
                Assert.True(next.Item.Key.Shape != before.Asked[^1].Shape || waiting.All(planned => planned.Item.Key.Shape == before.Asked[^1].Shape));
            }
        }

        Assert.NotEmpty(player.State.Outcomes);
    }

    [Fact]
    public void The_first_day_brings_new_items_only_and_not_too_many()
    {
        SessionPlan plan = DailyPlanner.Plan(Request(Examples.Nothing));
        Assert.All(plan.Items, planned => Assert.Equal(SessionPart.New, planned.Part));
        Assert.InRange(plan.Items.Length, 12, 30);
        Assert.Equal(0, plan.DueInAll);
    }

    [Fact]
    public void Changes_alone_are_asked_of_the_drill_that_is_chosen_and_otherwise_the_reason_is_given()
    {
        Drill changes = Examples.Drill("changes", "standard + 1-5@2", "x04440", "x04430") with { Directions = [Direction.ChangeInTime] };
        PlanRequest request = new(Repertoire.Of([changes]), Examples.Nothing, Examples.Today, 1);
        Assert.StartsWith("these drills ask only for changes in time", DailyPlanner.Plan(request).WhyEmpty, StringComparison.Ordinal);
        SessionPlan alone = DailyPlanner.Plan(request, changes);
        Assert.Null(alone.WhyEmpty);
        Assert.Equal(2, alone.Items.Select(planned => planned.Item.Key.Shape).Distinct().Count());
        Assert.All(alone.Items, planned => Assert.Equal(Direction.ChangeInTime, planned.Item.Key.Direction));
    }

    [Theory]
    [InlineData(Direction.HearSayName, "x04440 x04430", "all there is to ask is heard")]
    [InlineData(Direction.ChangeInTime, "x04440", "no drill holds a shape that can be asked")]
    public void An_empty_plan_says_why(Direction direction, string frettings, string why)
    {
        Drill drill = Examples.Drill("empty", "standard + 1-5@2", frettings.Split(' ')) with { Directions = [direction] };
        PlanRequest request = new(Repertoire.Of([drill]), Examples.Nothing, Examples.Today, 1) { CanListen = false };
        Assert.StartsWith(why, DailyPlanner.Plan(request, drill).WhyEmpty, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shape_never_met_is_seen_and_named_first_even_by_who_fares_badly_with_it()
    {
        PracticeItem[] seen = [.. Examples.Harbour.Items.Where(item => item.Drill == Examples.Quay && item.Key.Direction == Direction.SeeShapeSayShapeName)];
        MemoryState memory = Examples.Remembered(seen.Select((item, index) => Examples.Attempt(item, Grade.Missed, 0, index)));
        SessionPlan plan = DailyPlanner.Plan(Request(memory) with { Repertoire = Repertoire.Of([Examples.Lantern]) });
        var player = new Player(SessionState.Of(plan, default, memory, 1), Examples.World);
        player.Begin();
        player.PlayOn(0.5, 1);
        Assert.True(player.State.Asked.Count > 8);
        Assert.All(player.State.Asked.GroupBy(item => item.Shape), shape => Assert.Equal(Direction.SeeShapeSayShapeName, shape.First().Direction));
    }

    [Fact]
    public void What_has_fallen_low_comes_and_what_is_known_does_not()
    {
        PracticeItem[] items = [.. Examples.Harbour.Items.DistinctBy(item => item.Key.Shape)];
        MemoryState memory = Examples.Remembered(items.SelectMany((item, index) => index < 12
            ? new[] { Examples.Attempt(item, Grade.Steady, 90, index) }
            : [Examples.Attempt(item, Grade.Steady, 20, index), Examples.Attempt(item, Grade.Instant, 10, index), Examples.Attempt(item, Grade.Instant, 2, index)]));
        SessionPlan plan = DailyPlanner.Plan(Request(memory));
        Assert.InRange(plan.DueInAll, 1, 12);
        PracticeItem[] due = [.. plan.Items.Where(planned => planned.Part == SessionPart.Due).Select(planned => planned.Item)];
        Assert.NotEmpty(due);
        Assert.Subset(items.Take(12).ToHashSet(), due.ToHashSet());
        Assert.DoesNotContain(plan.All, planned => planned.Part is SessionPart.WarmUp or SessionPart.Ahead or SessionPart.Close);
        Assert.All(due, item => Assert.InRange(memory.Recall(item.Key, Examples.Today)!.Value, 0.3, 0.9));
    }

    [Fact]
    public void Neighbours_differ_within_blocks_of_one_setup()
    {
        SessionPlan plan = DailyPlanner.Plan(Request(Half(20)));
        (PlannedItem First, PlannedItem Second)[] neighbours = [.. plan.Items.Zip(plan.Items.Skip(1))];
        double sameDirection = neighbours.Count(pair => pair.First.Item.Key.Direction == pair.Second.Item.Key.Direction) / (double)neighbours.Length;
        Assert.InRange(sameDirection, 0, 0.2);
        Assert.InRange(plan.Blocks.Length, 1, 3);
        Assert.Equal(plan.Blocks.Length, plan.Blocks.Select(block => block.Setup).Distinct().Count());
    }

    [Fact]
    public void What_was_confused_stands_side_by_side()
    {
        PracticeItem one = Examples.Item(Examples.Quay, 0, Direction.SeeShapeSayShapeName);
        PracticeItem other = Examples.Item(Examples.Quay, 2, Direction.SeeShapeSayShapeName);
        Attempt[] log =
        [
            .. Examples.Harbour.Items.Take(30).Select((item, index) => Examples.Attempt(item, Grade.Steady, 20, index)),
            .. Enumerable.Range(100, 2).Select(number => Examples.Attempt(one, Grade.Missed, 10, number) with { ConfusedWith = other.Key.Shape }),
        ];
        SessionPlan plan = DailyPlanner.Plan(Request(Examples.Remembered(log)));
        int at = plan.Items.ToList().FindIndex(planned => planned.Item == one);
        Assert.Contains(other, plan.Items.Skip(Math.Max(0, at - 1)).Take(3).Select(planned => planned.Item));
    }

    private static IEnumerable<PracticeItem> Asked() => Examples.Harbour.Items.Where(item => item.Key.Direction != Direction.ChangeInTime);

    [Fact]
    public void A_backlog_is_finite_and_brings_nothing_new()
    {
        MemoryState memory = Examples.Remembered(Asked().Take(160).Select((item, index) => Examples.Attempt(item, Grade.Steady, 90, index)));
        SessionPlan plan = DailyPlanner.Plan(Request(memory));
        Backlog backlog = Assert.IsType<Backlog>(plan.Backlog);
        Assert.InRange(backlog.Due, 100, 160);
        Assert.InRange(backlog.Sessions, 2, 12);
        Assert.DoesNotContain(plan.Items, planned => planned.Part == SessionPart.New);
        Assert.Contains("all are back", backlog.Words, StringComparison.Ordinal);
        Assert.Equal(backlog.Today, plan.Items.Count(planned => planned.Part == SessionPart.Due));
    }

    [Fact]
    public void A_day_has_an_end_and_a_backlog_takes_the_whole_time()
    {
        TimeSpan Planned(int daysAgo)
        {
            MemoryState memory = Examples.Remembered(Asked().Take(160).Select((item, index) => Examples.Attempt(item, Grade.Steady, daysAgo, index)));
            return DailyPlanner.Plan(Request(memory)).Items.Aggregate(TimeSpan.Zero, (sum, planned) => sum + Pace.Of(planned.Item.Key.Direction, memory));
        }

        Assert.InRange(Planned(90).TotalMinutes, 9, 15);
        Assert.InRange(Planned(1).TotalMinutes, 1, 7);
    }

    [Fact]
    public void Without_sound_no_ear_question_is_planned()
    {
        PlanRequest request = Request(Half(20)) with { CanListen = false };
        Assert.DoesNotContain(DailyPlanner.Plan(request).All, planned => planned.Item.Key.Direction.NeedsSound());
        Assert.DoesNotContain(QuizPlanner.Plan(request).All, planned => planned.Item.Key.Direction.NeedsSound());
    }

    [Fact]
    public void The_quiz_asks_so_many_names()
    {
        SessionPlan plan = QuizPlanner.Plan(Request(Half(20)), 15);
        Assert.Equal(15, plan.Items.Length);
        Assert.All(plan.Items, planned => Assert.Contains(planned.Item.Key.Direction, Directions.Naming));
        Assert.Equal(15, plan.Items.Distinct().Count());
        Assert.Null(plan.Length);
    }

    [Fact]
    public void Weak_shapes_say_why()
    {
        PracticeItem one = Examples.Item(Examples.Quay, 0, Direction.SeeShapeSayShapeName);
        PracticeItem other = Examples.Item(Examples.Quay, 6, Direction.SeeShapeSayShapeName);
        MemoryState memory = Examples.Remembered(
        [
            Examples.Attempt(one, Grade.Steady, 9),
            Examples.Attempt(one, Grade.Missed, 6) with { ConfusedWith = other.Key.Shape },
            Examples.Attempt(one, Grade.Missed, 5) with { ConfusedWith = other.Key.Shape },
            Examples.Attempt(other, Grade.Steady, 1),
        ]);
        WeakShape weak = Assert.Single(WeakShapes.Find(Examples.Harbour.Items, memory, Examples.Today, Examples.Harbour));
        Assert.Equal(one, weak.Item);
        Assert.Contains("missed 2 of the last 3 times", weak.Reasons);
        Assert.Equal($"shape name: taken for {other.Subject.Voicing.ShapeName} in 2 of 3", weak.Line);
        Assert.Contains("lost once after it was known", weak.Reasons);
        Assert.Contains(weak.Reasons, reason => reason.StartsWith("recall down to", StringComparison.Ordinal));
        SessionPlan plan = WeakPlanner.Plan(Request(memory));
        Assert.Equal([one, other], plan.Items.Select(planned => planned.Item));
    }

    [Fact]
    public void Nothing_weak_is_an_empty_review() => Assert.True(WeakPlanner.Plan(Request(Examples.Nothing)).IsEmpty);

    // At least half as far apart as the shapes allow, but for a few at the end of a block.
    private static void AssertSpaced(IReadOnlyList<ItemKey> asked)
    {
        int near = 0;
        for (int later = 0; later < asked.Count; later++)
        {
            for (int earlier = Math.Max(0, later - 7); earlier < later; earlier++)
            {
                bool isSibling = asked[later].Shape == asked[earlier].Shape && asked[later].Direction != asked[earlier].Direction;
                int shapes = asked.Where(key => key.Shape.Rig == asked[later].Shape.Rig).Select(key => key.Shape).Distinct().Count();
                near += isSibling && later - earlier < Math.Min(Spacing.Siblings, shapes) / 2 ? 1 : 0;
                Assert.False(isSibling && later - earlier < 2, $"{asked[earlier]} at {earlier}, {asked[later]} at {later}");
            }
        }

        Assert.InRange(near, 0, asked.Count / 6);
    }
}
