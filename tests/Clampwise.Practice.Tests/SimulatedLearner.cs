namespace Clampwise.Practice.Tests;

/// <summary>
/// A learner whose memory truly follows the model with weights of their own: what is recalled is drawn by chance with the true
/// chance of recall, and a success is strained, steady or instant in fixed shares.
/// </summary>
internal sealed class SimulatedLearner(FsrsWeights truth, int seed)
{
    private const double KnownAtFirstSight = 0.5;
    private readonly Fsrs _truth = new(truth, FsrsSettings.Usual);
    private readonly Dictionary<ItemKey, (Memory Memory, PracticeDay Last)> _memories = [];
    private readonly Random _random = new(seed);

    /// <summary>Questions answered.</summary>
    public int Asked { get; private set; }

    /// <summary>The true chance of recall; 0 for what was never asked.</summary>
    public double Recall(ItemKey item, PracticeDay day) =>
        _memories.TryGetValue(item, out var known) ? _truth.Recall(known.Memory.Stability, Math.Max(0, day - known.Last)) : 0;

    /// <summary>Recalls or not.</summary>
    public Grade Answer(ItemKey item, PracticeDay day)
    {
        Asked++;
        bool isKnown = _memories.TryGetValue(item, out var known);
        double chance = isKnown ? Recall(item, day) : KnownAtFirstSight;
        Grade grade = _random.NextDouble() >= chance ? Grade.Missed : Success(isKnown);
        _memories[item] = (isKnown ? _truth.Next(known.Memory, Math.Max(0, day - known.Last), grade) : _truth.First(grade), day);
        return grade;
    }

    private Grade Success(bool isKnown)
    {
        double lot = _random.NextDouble();
        return lot < 0.2 ? Grade.Strained : lot < 0.8 || !isKnown ? Grade.Steady : Grade.Instant;
    }

    /// <summary>Weights of a learner: the published ones, each moved by chance within about a third, kept in range.</summary>
    public static FsrsWeights SomeWeights(int seed)
    {
        var random = new Random(seed);
        double[] moved = [.. FsrsWeights.Default.Values.Select((weight, i) =>
            Math.Clamp(weight * Math.Exp((random.NextDouble() - 0.5) * 0.7), FsrsWeights.Lowest[i], FsrsWeights.Highest[i]))];
        Array.Sort(moved, 0, 4);
        return FsrsWeights.Create(moved).Value;
    }
}
