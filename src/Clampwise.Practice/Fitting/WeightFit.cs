using System.Collections.Immutable;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;
using MathNet.Numerics.Optimization.ObjectiveFunctions;

namespace Clampwise.Practice;

/// <summary>
/// Fits the memory model's weights to the player's own log by maximum likelihood: one set for all directions, held near the
/// defaults by a penalty, newer answers weighing more. The first four fifths are fitted, and the fit is taken only if it predicts
/// the newest fifth better than the weights in use.
/// </summary>
public static class WeightFit
{
    /// <summary>Fewer answers than this are not fitted: below some hundreds a fit often makes things worse.</summary>
    public const int LeastAnswers = 1000;

    private const int MostIterations = 60;

    // How far each weight varies between learners (the published optimiser's spreads; from memory).
    private static readonly double[] s_spreads =
        [6.43, 9.66, 17.58, 27.85, .57, .28, .6, .12, .39, .18, .33, .3, .09, .16, .57, .25, 1.03, .31, .32, .14, .27];

    /// <summary>True if the log has grown to <see cref="LeastAnswers"/>, and to double of what it was when weights were last chosen.</summary>
    public static bool IsDue(IEnumerable<LogEntry> entries)
    {
        LogEntry[] all = [.. entries];
        int answers = LogReading.Attempts(all).Length;
        DateTimeOffset last = all.OfType<WeightsChosen>().Select(entry => entry.At).DefaultIfEmpty(DateTimeOffset.MinValue).Max();
        int before = all.OfType<Attempt>().Count(attempt => attempt.At <= last);
        return answers >= LeastAnswers && answers >= 2 * before;
    }

    /// <summary>Fits the weights to the attempts of a log, in order of time, and says whether they are better than those in use.</summary>
    public static FitReport Fit(ImmutableArray<Attempt> attempts, FsrsWeights inUse, FsrsSettings settings)
    {
        var history = ReviewHistory.Of(attempts);
        int split = history.Count - (history.Count / 5);
        if (attempts.Length < LeastAnswers || FitLoss.Labels(history, split, history.Count) == 0)
        {
            return new FitReport(attempts.Length, inUse, 0, 0, IsAccepted: false);
        }

        FsrsWeights fitted = Minimise(history, split, settings);
        double before = FitLoss.Mean(history, new Fsrs(inUse, settings), split, history.Count, weighsNewerMore: false);
        double after = FitLoss.Mean(history, new Fsrs(fitted, settings), split, history.Count, weighsNewerMore: false);
        return new FitReport(attempts.Length, fitted, before, after, after < before);
    }

    private static FsrsWeights Minimise(ReviewHistory history, int to, FsrsSettings settings)
    {
        double penalty = 1.0 / Math.Max(1, FitLoss.Labels(history, 0, to));
        // With same-day answers counted the published range of w19 starts a little above zero.
        ImmutableArray<double> lowest = settings.CountsSameDay ? FsrsWeights.Lowest.SetItem(19, 0.01) : FsrsWeights.Lowest;
        Vector<double> lower = Vector<double>.Build.DenseOfEnumerable(lowest.Select(Scaled));
        Vector<double> upper = Vector<double>.Build.DenseOfEnumerable(FsrsWeights.Highest.Select(Scaled));
        Vector<double> best = Vector<double>.Build.DenseOfEnumerable(FirstStabilities.Guess(history, to, settings).Values.Select(Scaled));
        double least = double.MaxValue;

        // The minimiser throws at its limit of iterations and would lose its point: the best one is kept in here.
        double Loss(Vector<double> scaled)
        {
            double loss = FitLoss.Mean(history, new Fsrs(Unscaled(scaled), settings, rounds: false), 0, to, weighsNewerMore: true)
                + (penalty * (scaled * scaled));
            if (loss < least)
            {
                (least, best) = (loss, scaled.Clone());
            }

            return loss;
        }

        var objective = new ForwardDifferenceGradientObjectiveFunction(ObjectiveFunction.Value(Loss), lower, upper);
        try
        {
            new BfgsBMinimizer(1e-5, 1e-6, 1e-7, MostIterations).FindMinimum(objective, lower, upper, best.Clone());
        }
        catch (OptimizationException)
        {
            // Its limit of iterations, or a line search that found no lower point: what was best so far stands.
        }

        return Unscaled(best);
    }

    // In spreads away from the default, so that every weight moves at one scale.
    private static double Scaled(double weight, int index) => (weight - FsrsWeights.Default[index]) / s_spreads[index];

    private static FsrsWeights Unscaled(Vector<double> scaled) => FsrsWeights.Create(scaled.Select((value, index) =>
        Math.Clamp(FsrsWeights.Default[index] + (value * s_spreads[index]), FsrsWeights.Lowest[index], FsrsWeights.Highest[index]))).Value;
}
