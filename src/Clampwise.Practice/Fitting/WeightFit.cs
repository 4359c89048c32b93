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
