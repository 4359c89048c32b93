using System.Collections.Immutable;
using Xunit.Abstractions;

namespace Clampwise.Practice.Tests;

public class FitTests(ITestOutputHelper output)
{
    private static readonly PracticeItem[] s_items = [.. Examples.Harbour.Items];

    // Answers at the intervals that the default model sets, with a little chance, as a log holds them.
    private static ImmutableArray<Attempt> Log(FsrsWeights truth, int answers, int seed)
    {
        var learner = new SimulatedLearner(truth, seed);
        var random = new Random(seed);
        var due = new PriorityQueue<int, int>(s_items.Select((_, index) => (index, index / 6)));
        var memories = new Dictionary<int, Memory>();
        var last = new Dictionary<int, int>();
        var log = ImmutableArray.CreateBuilder<Attempt>();
        while (log.Count < answers && due.TryDequeue(out int index, out int day))
        {
            PracticeItem item = s_items[index];
            Grade grade = learner.Answer(item.Key, Examples.Today + day);
            memories[index] = memories.TryGetValue(index, out Memory memory) ? Fsrs.Default.Next(memory, day - last[index], grade) : Fsrs.Default.First(grade);
            last[index] = day;
            log.Add(Examples.Attempt(item, grade, -day, log.Count));
            due.Enqueue(index, day + Math.Max(1, (int)(Fsrs.Default.IntervalDays(memories[index].Stability) * (0.5 + random.NextDouble()))));
        }

        return log.ToImmutable();
    }

    [Fact]
    public void Fitted_weights_predict_learners_unlike_the_average_better()
    {
        FitReport[] reports = [.. Enumerable.Range(1, 6).Select(seed =>
            WeightFit.Fit(Log(SimulatedLearner.SomeWeights(seed), 1500, seed), FsrsWeights.Default, FsrsSettings.Usual))];
        foreach (FitReport report in reports)
        {
            output.WriteLine($"{report.LossBefore:0.0000} to {report.LossAfter:0.0000} {report.Words}");
        }

        Assert.True(reports.Average(report => report.LossAfter) < reports.Average(report => report.LossBefore));
        Assert.True(reports.Count(report => report.IsAccepted) >= 4);
        Assert.All(reports, report => Assert.Equal(report.IsAccepted, report.LossBefore - report.LossAfter > report.StandardError));
        Assert.All(reports, report => Assert.InRange(report.StandardError, 0.0005, 0.02));
    }

    [Fact]
    public void The_loss_is_that_of_the_coin_worked_by_hand()
    {
        // One item, right at first, then asked again on the day its recall has fallen to exactly 90 %: -ln .9 if right, -ln .1 if wrong.
        FsrsWeights weights = FsrsWeights.Create(FsrsWeights.Default.Values.SetItem(2, 4)).Value;
        double Loss(Grade second) => FitLoss.Mean(
            ReviewHistory.Of([Examples.Attempt(s_items[0], Grade.Steady, 10), Examples.Attempt(s_items[0], second, 6, 1)]),
            new Fsrs(weights, FsrsSettings.Usual), 0, 2, weighsNewerMore: true);
        Assert.Equal(-Math.Log(0.9), Loss(Grade.Steady), 6);
        Assert.Equal(-Math.Log(0.1), Loss(Grade.Missed), 6);
    }

    [Fact]
    public void First_answers_same_day_answers_and_warm_ones_are_no_labels()
    {
        PracticeItem item = s_items[0];
        var history = ReviewHistory.Of(
        [
            Examples.Attempt(item, Grade.Steady, 10),
            Examples.Attempt(item, Grade.Steady, 10, 1),
            Examples.Attempt(item, Grade.Steady, 7, 2) with { IsPrimed = true },
            Examples.Attempt(item, Grade.Missed, 3, 3),
        ]);
        Assert.Equal([false, false, false, true], history.Items.Single().Select(review => review.IsLabel));
        Assert.Equal([0, 0, 3, 4], history.Items.Single().Select(review => review.Days));
    }

    [Fact]
    public void Too_few_answers_are_left_alone()
    {
        FitReport report = WeightFit.Fit(Log(FsrsWeights.Default, 400, 1), FsrsWeights.Default, FsrsSettings.Usual);
        Assert.False(report.IsAccepted);
        Assert.Contains("400 answers are too few", report.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fit_is_due_at_a_thousand_answers_and_at_each_doubling()
    {
        Attempt[] attempts = [.. Log(FsrsWeights.Default, 2400, 2)];
        DateTimeOffset After(int count) => attempts.OrderBy(attempt => attempt.At).ElementAt(count - 1).At;
        WeightsChosen At(int count) => new(default, After(count), [], "");
        bool IsDue(int count, params LogEntry[] more) => WeightFit.IsDue(attempts.OrderBy(attempt => attempt.At).Take(count).Concat(more));
        Assert.False(IsDue(999));
        Assert.True(IsDue(1000));
        Assert.False(IsDue(1999, At(1000)));
        Assert.True(IsDue(2000, At(1000)));
    }

    [Fact]
    public void A_choice_of_weights_counts_for_the_whole_log_and_can_be_undone()
    {
        FsrsWeights own = SimulatedLearner.SomeWeights(3);
        Attempt attempt = Examples.Attempt(s_items[0], Grade.Steady, 3);
        WeightsChosen chosen = new FitReport(1000, own, 0.4, 0.3, 0.05).ToEntry(new EntryId(new Guid(1, 0, 0, new byte[8])), Examples.Evening, FsrsWeights.Default);
        Assert.Equal(own, MemoryState.Rebuild([chosen, attempt], FsrsSettings.Usual).Model.Weights);
        WeightsChosen undo = LogReading.UndoWeights([attempt, chosen], new EntryId(new Guid(2, 0, 0, new byte[8])), Examples.Evening.AddDays(1))!;
        Assert.Equal(FsrsWeights.Default, MemoryState.Rebuild([undo, chosen, attempt], FsrsSettings.Usual).Model.Weights);
        Assert.Null(LogReading.UndoWeights([attempt, chosen, undo], new EntryId(new Guid(3, 0, 0, new byte[8])), Examples.Evening.AddDays(2)));
    }

    [Theory]
    [InlineData(0.02, 0.019, true)]
    [InlineData(0.02, 0.021, false)]
    [InlineData(-0.01, 0.001, false)]
    public void A_fit_is_taken_if_it_gains_more_than_one_standard_error(double gain, double error, bool isTaken)
    {
        var report = new FitReport(1000, FsrsWeights.Default, 0.4, 0.4 - gain, error);
        Assert.Equal(isTaken, report.IsAccepted);
        Assert.Contains(isTaken ? "now follows your own" : "stays as it is", report.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void What_weights_mean_is_said_in_words()
    {
        string usual = string.Join(' ', WeightsInWords.Of(Fsrs.Default));
        Assert.Contains("A new shape named right at your pace has fallen to 90 % after 2 days", usual, StringComparison.Ordinal);
        Assert.Contains("after a miss at the first try within the same day", usual, StringComparison.Ordinal);
        double[] quick = [.. FsrsWeights.Default.Values];
        (quick[0], quick[1], quick[2], quick[3]) = (4, 6, 9, 30);
        Assert.Contains("after 9 days", string.Join(' ', WeightsInWords.Of(new Fsrs(FsrsWeights.Create(quick).Value, FsrsSettings.Usual))), StringComparison.Ordinal);
    }
}
