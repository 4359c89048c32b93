using CsCheck;

namespace Clampwise.Practice.Tests;

/// <summary>Properties that the model's published description states of the forgetting curve and of the moves of stability.</summary>
public class FsrsPropertyTests
{
    private static readonly Gen<Memory> s_memories = Gen.Select(Gen.Double[0.1, 3000], Gen.Double[1, 10], (stability, difficulty) => new Memory(stability, difficulty));
    private static readonly Gen<FsrsWeights> s_weights = Gen.Int[1, 500].Select(SimulatedLearner.SomeWeights);

    [Fact]
    public void Stability_is_the_time_at_which_recall_is_ninety_percent() => Gen.Select(s_weights, Gen.Double[0.1, 3000]).Holds((weights, stability) =>
        Math.Abs(new Fsrs(weights, FsrsSettings.Usual).Recall(stability, stability) - 0.9) < 1e-6);

    [Fact]
    public void Recall_starts_at_one_and_falls_with_time_and_faster_with_less_stability() =>
        Gen.Select(s_weights, Gen.Double[0.1, 3000], Gen.Double[0, 3000], Gen.Double[0.1, 500]).Holds((weights, stability, days, more) =>
        {
            var model = new Fsrs(weights, FsrsSettings.Usual);
            Assert.Equal(1, model.Recall(stability, 0));
            Assert.True(model.Recall(stability, days + more) <= model.Recall(stability, days));
            Assert.True(model.Recall(stability + more, days) >= model.Recall(stability, days));
        });

    [Fact]
    public void A_later_success_raises_stability_more_and_a_better_grade_too() => Gen.Select(s_memories, Gen.Int[1, 300]).Holds((memory, days) =>
    {
        double Next(int after, Grade grade) => Fsrs.Default.Next(memory, after, grade).Stability;
        Assert.True(Next(days, Grade.Strained) >= memory.Stability);
        Assert.True(Next(days, Grade.Strained) <= Next(days, Grade.Steady) && Next(days, Grade.Steady) <= Next(days, Grade.Instant));
        Assert.True(Next(days + 30, Grade.Steady) >= Next(days, Grade.Steady));
        Assert.True(Next(days, Grade.Missed) <= memory.Stability);
    });

    [Fact]
    public void What_is_harder_gains_less() => Gen.Select(s_memories, Gen.Int[1, 300]).Holds((memory, days) =>
        Fsrs.Default.Next(memory with { Difficulty = Math.Min(10, memory.Difficulty + 1) }, days, Grade.Steady).Stability
            <= Fsrs.Default.Next(memory, days, Grade.Steady).Stability);

    [Fact]
    public void At_ninety_percent_the_interval_is_the_stability_and_less_wished_means_longer() => s_memories.Holds(memory =>
    {
        Assert.InRange(Fsrs.Default.IntervalDays(memory.Stability), Math.Max(1, memory.Stability - 0.51), Math.Max(1, memory.Stability + 0.51));
        Assert.True(new Fsrs(FsrsWeights.Default, new FsrsSettings(0.8)).IntervalDays(memory.Stability) >= Fsrs.Default.IntervalDays(memory.Stability));
    });

    [Fact]
    public void States_stay_in_their_ranges() => Gen.Select(s_weights, Gen.Int[1, 4].Array[1, 40], Gen.Int[0, 400].Array[40]).Holds((weights, grades, gaps) =>
    {
        var model = new Fsrs(weights, FsrsSettings.Usual);
        Memory memory = model.First((Grade)grades[0]);
        for (int i = 1; i < grades.Length; i++)
        {
            memory = model.Next(memory, gaps[i], (Grade)grades[i]);
            Assert.InRange(memory.Stability, Fsrs.LeastStability, Fsrs.MostStability);
            Assert.InRange(memory.Difficulty, 1, 10);
        }
    });

    [Theory]
    [InlineData(0.69, 100, "the desired retention must lie from 0.7 to 0.97, found 0.69")]
    [InlineData(double.NaN, 100, "the desired retention must lie from 0.7 to 0.97, found NaN")]
    [InlineData(0.9, 0, "the longest interval must be 1 to 36500 days, found 0")]
    public void Settings_out_of_range_are_refused(double retention, int days, string words) =>
        Assert.Equal(words, FsrsSettings.Create(retention, true, days).Fault.Message);

    [Fact]
    public void Weights_out_of_range_are_refused()
    {
        Assert.Equal("expected 21 weights, found 3", FsrsWeights.Create([1, 2, 3]).Fault.Message);
        Assert.Equal("weight w4 must lie from 1 to 10, found 11", FsrsWeights.Create(FsrsWeights.Default.Values.SetItem(4, 11)).Fault.Message);
    }
}
