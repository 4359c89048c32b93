using Xunit.Abstractions;

namespace Clampwise.Practice.Tests;

/// <summary>
/// Whole months of sessions, with learners whose true memory is known: planned sessions against a fixed round-robin over the same
/// items. What is compared is the true recall, which no planner sees.
/// </summary>
public class SimulationTests(ITestOutputHelper output)
{
    private const int Days = 150;
    private const int SettledFrom = 60;
    private static readonly Repertoire s_repertoire = Many.Shapes(90, [Direction.SeeShapeSayShapeName, Direction.NamePlaceShape, Direction.HearSayName]);
    private static readonly SessionWorld s_world = Examples.World with { Repertoire = s_repertoire };
    private static readonly ItemKey[] s_items = [.. s_repertoire.Items.Select(item => item.Key)];

    [Fact]
    public void Planned_sessions_keep_recall_with_fewer_questions_than_a_round_robin()
    {
        var shares = new List<double>();
        for (int seed = 1; seed <= 3; seed++)
        {
            FsrsWeights truth = SimulatedLearner.SomeWeights(seed);
            (double recall, double perDay, double rightWhenDue) = Planned(truth, seed);
            int roundRobin = Enumerable.Range(1, 200).First(count => RoundRobin(truth, seed, count) >= recall);
            shares.Add(perDay / roundRobin);
            output.WriteLine($"learner {seed}: recall {recall:0.000} at {perDay:0.0} questions a day, right when due {rightWhenDue:0.000}; a round-robin needs {roundRobin}: {shares[^1]:0.00}");
            Assert.InRange(recall, 0.85, 0.99);
            Assert.InRange(rightWhenDue, 0.65, 0.97);
        }

        output.WriteLine($"planned sessions ask {shares.Average() * 100:0} % of the questions of a round-robin for the same recall");
        Assert.True(shares.Average() < 0.7, $"{shares.Average():0.00}");
    }

    // With nothing forgotten and nothing missed the round-robin's recall is the mean of the curve over one round: an analytic case.
    [Fact]
    public void The_simulated_learner_forgets_along_the_curve()
    {
        var learner = new SimulatedLearner(FsrsWeights.Default, 1);
        ItemKey item = s_items[0];
        Grade first = learner.Answer(item, Examples.Today);
        double stability = Fsrs.Default.First(first).Stability;
        Assert.Equal(1, learner.Recall(item, Examples.Today));
        Assert.Equal(Fsrs.Default.Recall(stability, 10), learner.Recall(item, Examples.Today + 10));
        double share = Enumerable.Range(0, 4000).Count(seed =>
        {
            var other = new SimulatedLearner(FsrsWeights.Default, seed);
            other.Answer(item, Examples.Today);
            double chance = other.Recall(item, Examples.Today + 10);
            bool isRight = other.Answer(item, Examples.Today + 10) != Grade.Missed;
            return isRight == (chance > 0.5);
        }) / 4000.0;
        Assert.InRange(share, 0.6, 0.95);
    }

    private static (double Recall, double PerDay, double RightWhenDue) Planned(FsrsWeights truth, int seed)
    {
        var learner = new SimulatedLearner(truth, seed);
        MemoryState memory = Examples.Nothing;
        var recalls = new List<double>();
        var due = new List<bool>();
        int asked = 0;
        for (int day = 0; day < Days; day++)
        {
            PracticeDay today = Examples.Today + day;
            bool isSettled = day >= SettledFrom;
            if (isSettled)
            {
                recalls.Add(s_items.Average(item => learner.Recall(item, today)));
            }

            SessionPlan plan = DailyPlanner.Plan(new PlanRequest(s_repertoire, memory, today, seed + day) { FillsTime = false });
            var player = new Player(SessionState.Of(plan, default, memory, seed + day), s_world, Examples.Evening.AddDays(day));
            Play(player, learner, today, seed + day);
            memory = player.State.Memory;
            asked += isSettled ? player.State.Outcomes.Length : 0;
            due.AddRange(player.State.Outcomes.Where(outcome => isSettled && outcome.Planned.Part == SessionPart.Due).Select(outcome => outcome.Attempt.IsCorrect));
        }

        return (recalls.Average(), asked / (double)(Days - SettledFrom), due.Count(right => right) / (double)due.Count);
    }

    private static void Play(Player player, SimulatedLearner learner, PracticeDay today, int seed)
    {
        var random = new Random(seed);
        player.Begin();
        while (player.State is { Phase: SessionPhase.Asking, Open: { } open })
        {
            Grade grade = learner.Answer(open.Planned.Item.Key, today);
            double typical = grade switch { Grade.Instant => 1.5, Grade.Steady => 3.5, _ => 10 };
            player.Answer(grade == Grade.Missed ? new Answer.NotKnown() : Examples.Right(open.Question), typical * (0.8 + (0.4 * random.NextDouble())));
            player.Wait(3);
            player.GoOn();
        }
    }

    private static double RoundRobin(FsrsWeights truth, int seed, int perDay)
    {
        var learner = new SimulatedLearner(truth, seed);
        var recalls = new List<double>();
        int next = 0;
        for (int day = 0; day < Days; day++)
        {
            PracticeDay today = Examples.Today + day;
            if (day >= SettledFrom)
            {
                recalls.Add(s_items.Average(item => learner.Recall(item, today)));
            }

            for (int i = 0; i < perDay; i++)
            {
                learner.Answer(s_items[next++ % s_items.Length], today);
            }
        }

        return recalls.Average();
    }
}
