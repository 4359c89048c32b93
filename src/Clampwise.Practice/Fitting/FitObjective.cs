using System.Collections.Immutable;
using MathNet.Numerics.LinearAlgebra;

namespace Clampwise.Practice;

/// <summary>
/// What the fit makes small: the mean log loss with a penalty for every weight's distance from its default. Weights are scaled to
/// spreads away from the default, so that all move at one scale. The best point is kept in here, since the minimiser throws at its
/// limit of iterations and would lose it.
/// </summary>
internal sealed class FitObjective
{
    private const int SameDayDecay = 19;
    private const double LeastSameDayDecay = 0.01;

    // How far each weight varies between learners (the published optimiser's spreads; from memory).
    private static readonly double[] s_spreads =
        [6.43, 9.66, 17.58, 27.85, .57, .28, .6, .12, .39, .18, .33, .3, .09, .16, .57, .25, 1.03, .31, .32, .14, .27];

    private readonly ReviewHistory _history;
    private readonly int _to;
    private readonly FsrsSettings _settings;
    private readonly double _penalty;
    private double _least = double.MaxValue;

    public FitObjective(ReviewHistory history, int to, FsrsSettings settings)
    {
        (_history, _to, _settings) = (history, to, settings);
        _penalty = 1.0 / Math.Max(1, FitLoss.Labels(history, 0, to));
        // With same-day answers counted the published range of w19 starts a little above zero.
        Lower = Scale(settings.CountsSameDay ? FsrsWeights.Lowest.SetItem(SameDayDecay, LeastSameDayDecay) : FsrsWeights.Lowest);
        Upper = Scale(FsrsWeights.Highest);
    }

    /// <summary>The lowest scaled weights.</summary>
    public Vector<double> Lower { get; }

    /// <summary>The highest scaled weights.</summary>
    public Vector<double> Upper { get; }

    /// <summary>The weights of the least loss so far.</summary>
    public FsrsWeights Best { get; private set; } = FsrsWeights.Default;

    /// <summary>The loss at a point; numeric slopes need it unrounded.</summary>
    public double At(Vector<double> scaled)
    {
        FsrsWeights weights = Unscale(scaled);
        double loss = FitLoss.Mean(_history, new Fsrs(weights, _settings, rounds: false), 0, _to, weighsNewerMore: true)
            + (_penalty * (scaled * scaled));
        (Best, _least) = loss < _least ? (weights, loss) : (Best, _least);
        return loss;
    }

    /// <summary>Weights in spreads away from the default.</summary>
    public static Vector<double> Scale(ImmutableArray<double> weights) => Vector<double>.Build.DenseOfEnumerable(
        weights.Select((weight, index) => (weight - FsrsWeights.Default[index]) / s_spreads[index]));

    private static FsrsWeights Unscale(Vector<double> scaled) => FsrsWeights.Create(scaled.Select((value, index) =>
        Math.Clamp(FsrsWeights.Default[index] + (value * s_spreads[index]), FsrsWeights.Lowest[index], FsrsWeights.Highest[index]))).Value;
}
