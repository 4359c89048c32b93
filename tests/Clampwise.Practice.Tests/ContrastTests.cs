namespace Clampwise.Practice.Tests;

/// <summary>What was taken for one another stands side by side the next time, until it was told apart.</summary>
public class ContrastTests
{
    private static readonly Repertoire s_drills = Repertoire.Of([.. Shipped.Drills.Take(8)]);

    [Fact]
    public void Two_confusions_of_a_pair_put_it_side_by_side_in_the_next_session()
    {
        const int cases = 100;
        int beside = 0;
        for (int seed = 0; seed < cases; seed++)
        {
            (MemoryState memory, PracticeItem one, PracticeItem other) = Confused(seed);
            ItemKey[] asked = Played(memory, seed);
            int place = Array.FindIndex(asked, key => key == one.Key || key == other.Key);
            beside += place >= 0 && place + 1 < asked.Length && (asked[place + 1] == one.Key || asked[place + 1] == other.Key) ? 1 : 0;
        }

        Assert.InRange(beside, 95, cases);
    }

    [Fact]
    public void At_most_three_pairs_come_in_a_session_and_each_stands_next_to_each_other()
    {
        for (int seed = 0; seed < 20; seed++)
        {
            var attempts = new List<Attempt>(Met(s_drills.Items.Where(item => item.Key.Direction == Direction.SeeShapeSayShapeName)));
            PracticeItem[] items = [.. s_drills.ShapesIn(s_drills.Items[0].Key.Shape.Rig)];
            new Random(seed).Shuffle(items);
            for (int pair = 0; pair < 6; pair++)
            {
                attempts.AddRange(Confusion(items[pair * 2], items[(pair * 2) + 1], 3, 5000 + (pair * 10)));
            }

            SessionPlan plan = DailyPlanner.Plan(new PlanRequest(s_drills, Examples.Remembered(attempts), Examples.Today, seed));
            PlannedItem[] contrasts = [.. plan.Items.Where(planned => planned.Part == SessionPart.Contrast)];
            Assert.Equal(6, contrasts.Length);
            int[] places = [.. contrasts.Select(planned => plan.Items.IndexOf(planned))];
            Assert.All(Enumerable.Range(0, 3), pair => Assert.Equal(places[pair * 2] + 1, places[(pair * 2) + 1]));
        }
    }

    [Fact]
    public void A_pair_is_dropped_when_it_was_told_apart_three_times_running_and_comes_back_when_confused_twice_more()
    {
        (PracticeItem one, PracticeItem other) = Pair(3);
        List<Attempt> attempts = [.. Met([one, other]), .. Confusion(one, other, 9, 100)];
        bool IsAsked() => !new Contrasts(Examples.Remembered(attempts), Examples.Today, [one, other]).Pairs.IsEmpty;
        void Beside(Grade first, Grade second, int daysAgo) => attempts.AddRange(
            [Examples.Attempt(one, first, daysAgo, 200), Examples.Attempt(other, second, daysAgo, 201)]);
        Assert.True(IsAsked());
        Beside(Grade.Steady, Grade.Steady, 8);
        Beside(Grade.Steady, Grade.Strained, 7);
        Assert.True(IsAsked());
        Beside(Grade.Steady, Grade.Missed, 6);
        Beside(Grade.Steady, Grade.Steady, 5);
        Beside(Grade.Steady, Grade.Steady, 4);
        Assert.True(IsAsked());
        Beside(Grade.Steady, Grade.Steady, 3);
        Assert.False(IsAsked());
        attempts.Add(Examples.Attempt(other, Grade.Missed, 2, 300) with { ConfusedWith = one.Key.Shape });
        Assert.False(IsAsked());
        attempts.Add(Examples.Attempt(one, Grade.Missed, 1, 301) with { ConfusedWith = other.Key.Shape });
        Assert.True(IsAsked());
    }

    [Fact]
    public void Right_answers_far_from_each_other_do_not_tell_a_pair_apart()
    {
        (PracticeItem one, PracticeItem other) = Pair(3);
        (PracticeItem between, _) = Pair(8);
        List<Attempt> attempts = [.. Met([one, other]), .. Confusion(one, other, 9, 100)];
        for (int day = 1; day <= 4; day++)
        {
            attempts.AddRange([Examples.Attempt(one, Grade.Steady, day, 200), Examples.Attempt(between, Grade.Steady, day, 201), Examples.Attempt(other, Grade.Steady, day, 202)]);
        }

        Assert.NotEmpty(new Contrasts(Examples.Remembered(attempts), Examples.Today, [one, other]).Pairs);
    }

    [Fact]
    public void A_pair_of_two_setups_is_left_alone_since_the_clamp_would_move_between()
    {
        PracticeItem one = s_drills.Items.First(item => item.Key.Direction == Direction.SeeShapeSayShapeName);
        PracticeItem other = s_drills.Items.First(item => item.Key.Direction == Direction.SeeShapeSayShapeName && !item.Drill.Setup.Equals(one.Drill.Setup));
        MemoryState memory = Examples.Remembered([.. Met([one, other]), .. Confusion(one, other, 3, 100)]);
        Assert.Empty(new Contrasts(memory, Examples.Today, s_drills.Items).Pairs);
    }

    private static (MemoryState Memory, PracticeItem One, PracticeItem Other) Confused(int seed)
    {
        var random = new Random(seed);
        Direction direction = new[] { Direction.SeeShapeSayShapeName, Direction.SeeShapeSaySoundingName, Direction.HearSayName, Direction.NamePlaceShape, Direction.HearPickShape }[seed % 5];
        PracticeItem[] met = [.. s_drills.Items.Where(item => item.Key.Direction == direction)];
        PracticeItem one = met[random.Next(met.Length)];
        PracticeItem[] others = [.. met.Where(item => item.Drill.Setup.Equals(one.Drill.Setup) && item.Key.Shape != one.Key.Shape)];
        PracticeItem other = others[random.Next(others.Length)];
        return (Examples.Remembered([.. Met(met), .. Confusion(one, other, 1, 9000)]), one, other);
    }

    private static (PracticeItem One, PracticeItem Other) Pair(int first)
    {
        PracticeItem[] items = [.. s_drills.Items.Where(item => item.Key.Direction == Direction.SeeShapeSayShapeName)];
        return (items[first], items.First(item => item.Drill.Setup.Equals(items[first].Drill.Setup) && item != items[first]));
    }

    private static IEnumerable<Attempt> Met(IEnumerable<PracticeItem> items) => items.Select((item, number) => Examples.Attempt(item, Grade.Steady, 12, number));

    // One for the other, and the other for the one.
    private static Attempt[] Confusion(PracticeItem one, PracticeItem other, int daysAgo, int number) =>
    [
        Examples.Attempt(one, Grade.Missed, daysAgo, number) with { ConfusedWith = other.Key.Shape },
        Examples.Attempt(other, Grade.Missed, daysAgo, number + 2) with { ConfusedWith = one.Key.Shape },
    ];

    private static ItemKey[] Played(MemoryState memory, int seed)
    {
        SessionPlan plan = DailyPlanner.Plan(new PlanRequest(s_drills, memory, Examples.Today, seed));
        var player = new Player(SessionState.Of(plan, default, memory, seed), Examples.World with { Repertoire = s_drills });
        player.Begin();
        player.PlayOn(seed: seed);
        return [.. player.State.Asked];
    }
}
