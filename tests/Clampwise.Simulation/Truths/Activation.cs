using Clampwise.Practice;

namespace Clampwise.Simulation;

/// <summary>
/// Memory as activation: every encounter leaves a trace that decays by a power of time, the faster the more active the memory was when it was
/// laid down, which is the spacing effect (Pavlik and Anderson 2005, Practice and forgetting effects on vocabulary memory, Cognitive
/// Science 29: decay scale c = .217, intercept a = .177, threshold -.704, noise .255, time between sessions scaled by .025).
/// </summary>
/// <param name="ease">Added to the activation of every item: a gifted learner's is higher.</param>
/// <param name="seed">Seed of the differences between items.</param>
public sealed class Activation(double ease, int seed) : ITruth
{
    private const double Scale = 0.217;
    private const double Intercept = 0.177;
    private const double Threshold = -0.704;
    private const double Noise = 0.255;
    private const double BetweenSessions = 0.025;
    private const double SecondsADay = 86400;
    private const double LeastSeconds = 10;
    private const double ItemSpread = 0.2;
    private readonly Dictionary<ItemKey, List<(double Time, double Decay)>> _traces = [];
    private readonly Dictionary<ItemKey, double> _ease = [];
    private readonly Random _random = new(seed);

    /// <inheritdoc/>
    public double Recall(ItemKey item, double time) =>
        _traces.TryGetValue(item, out var traces) ? 1 / (1 + Math.Exp((Threshold - ActivationOf(traces, time) - _ease[item]) / Noise)) : 0;

    /// <inheritdoc/>
    public void Practise(ItemKey item, double time, bool isRecalled)
    {
        if (!_traces.TryGetValue(item, out var traces))
        {
            _traces[item] = traces = [];
            _ease[item] = ease + (ItemSpread * Chances.Normal(_random));
        }

        traces.Add((time, traces.Count == 0 ? Intercept : DecayAfter(ActivationOf(traces, time))));
    }

    /// <summary>The decay of a trace laid down at an activation: c e^m + a.</summary>
    public static double DecayAfter(double activation) => (Scale * Math.Exp(activation)) + Intercept;

    private static double ActivationOf(List<(double Time, double Decay)> traces, double time)
    {
        double sum = 0;
        foreach ((double laid, double decay) in traces)
        {
            sum += Math.Pow(Math.Max(LeastSeconds, SecondsBetween(laid, time)), -decay);
        }

        return Math.Log(sum);
    }

    // Within a session time counts in full, from one day to another only a part of it.
    private static double SecondsBetween(double from, double to) =>
        (Math.Floor(to) - Math.Floor(from)) * SecondsADay * BetweenSessions + ((to - Math.Floor(to) - from + Math.Floor(from)) * SecondsADay);
}
