using Clampwise.Practice;

namespace Clampwise.Simulation;

/// <summary>The published model itself, with weights moved by chance from the published ones.</summary>
/// <param name="seed">Seed of the learner.</param>
public sealed class PublishedModel(int seed) : ITruth
{
    private readonly Fsrs _model = new(SomeWeights(seed), FsrsSettings.Usual);
    private readonly Dictionary<ItemKey, (Memory Memory, double Last)> _items = [];
    private readonly Random _random = new(seed);

    /// <inheritdoc/>
    public double Recall(ItemKey item, double time) =>
        _items.TryGetValue(item, out var state) ? _model.Recall(state.Memory.Stability, Math.Max(0, time - state.Last)) : 0;

    /// <inheritdoc/>
    public void Practise(ItemKey item, double time, bool isRecalled)
    {
        double lot = _random.NextDouble();
        Grade grade = !isRecalled ? Grade.Missed : lot < 0.2 ? Grade.Strained : lot < 0.85 ? Grade.Steady : Grade.Instant;
        Memory next = _items.TryGetValue(item, out var state)
            ? _model.Next(state.Memory, (int)(Math.Floor(time) - Math.Floor(state.Last)), grade)
            : _model.First(Grade.Steady);
        _items[item] = (next, time);
    }

    private static FsrsWeights SomeWeights(int seed)
    {
        var random = new Random(seed);
        double[] moved = [.. FsrsWeights.Default.Values.Select((weight, i) =>
            Math.Clamp(weight * Math.Exp((random.NextDouble() - 0.5) * 0.4), FsrsWeights.Lowest[i], FsrsWeights.Highest[i]))];
        Array.Sort(moved, 0, 4);
        return FsrsWeights.Create(moved).Value;
    }
}
