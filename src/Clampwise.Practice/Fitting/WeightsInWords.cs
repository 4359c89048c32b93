using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>What weights of the memory model mean for who practises with them.</summary>
public static class WeightsInWords
{
    private const int Answers = 4;

    /// <summary>Sentences: how long a new shape lasts, what each further answer adds, what a miss takes away.</summary>
    public static ImmutableArray<string> Of(Fsrs model)
    {
        Memory steady = model.First(Grade.Steady);
        double missed = model.First(Grade.Missed).Stability;
        double[] lasting = new double[Answers];
        Memory memory = steady;
        for (int i = 0; i < Answers; i++)
        {
            memory = model.Next(memory, DaysOf(memory.Stability), Grade.Steady);
            lasting[i] = memory.Stability;
        }

        double lapsed = model.Next(memory, DaysOf(memory.Stability), Grade.Missed).Stability;
        return
        [
            $"A new shape named right at your pace has fallen to 90 % after {Days(steady.Stability)}, after a miss at the first try {Within(missed)}.",
            $"Each right answer at that point makes it last longer: {string.Join(", then ", lasting.Select(Days))}.",
            $"A miss after those takes it back to {Days(lapsed)}.",
        ];
    }

    private static int DaysOf(double stability) => Math.Max(1, (int)Math.Round(stability));

    private static string Days(double stability) => Counted.Of(DaysOf(stability), "day");

    private static string Within(double stability) => stability < 1 ? "within the same day" : $"after {Days(stability)}";
}
