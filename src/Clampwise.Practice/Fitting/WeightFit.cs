using System.Collections.Immutable;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;
using MathNet.Numerics.Optimization.ObjectiveFunctions;
using MathNet.Numerics.Statistics;

namespace Clampwise.Practice;

/// <summary>
/// Fits the memory model's weights to the player's own log by maximum likelihood: one set for all directions, held near the
/// defaults by a penalty, newer answers weighing more. The first four fifths are fitted, and the fit is taken only if it predicts
/// the newest fifth better than the weights in use by more than one standard error.
/// </summary>
public static class WeightFit
{
    /// <summary>Fewer answers than this are not fitted: below some hundreds a fit often makes things worse.</summary>
    public const int LeastAnswers = 1000;

    private const int MostIterations = 60;

    // A standard error takes more than one answer.
    private const int LeastLabels = 2;

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
        if (attempts.Length < LeastAnswers || FitLoss.Labels(history, split, history.Count) < LeastLabels)
        {
            return new FitReport(attempts.Length, inUse, 0, 0, 0);
        }

        FsrsWeights fitted = Minimise(history, split, settings);
        double[] before = [.. FitLoss.Each(history, new Fsrs(inUse, settings), split, history.Count).Select(label => label.Loss)];
        double[] after = [.. FitLoss.Each(history, new Fsrs(fitted, settings), split, history.Count).Select(label => label.Loss)];
        double[] gains = [.. before.Zip(after, (one, other) => one - other)];
        return new FitReport(attempts.Length, fitted, before.Average(), after.Average(), Statistics.StandardDeviation(gains) / Math.Sqrt(gains.Length));
    }

    private static FsrsWeights Minimise(ReviewHistory history, int to, FsrsSettings settings)
    {
        var loss = new FitObjective(history, to, settings);
        var objective = new ForwardDifferenceGradientObjectiveFunction(ObjectiveFunction.Value(loss.At), loss.Lower, loss.Upper);
        Vector<double> start = FitObjective.Scale(FirstStabilities.Guess(history, to, settings).Values);
        try
        {
            new BfgsBMinimizer(1e-5, 1e-6, 1e-7, MostIterations).FindMinimum(objective, loss.Lower, loss.Upper, start);
        }
        catch (OptimizationException)
        {
            // Its limit of iterations, or a line search that found no lower point: what was best so far stands.
        }

        return loss.Best;
    }
}
