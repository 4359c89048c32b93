using Clampwise.Practice;

namespace Clampwise.Simulation;

/// <summary>
/// Recall falls by a power of time (1 + t / s)^-.5 (Wixted and Carpenter 2007, The Wickelgren power law and the Ebbinghaus savings
/// function, Psychological Science 18), and what is practised in one direction strengthens the same shape in the others in part
/// (Pan and Rickard 2018, Transfer of test-enhanced learning, Psychological Bulletin 144: d = .40). The growth of s is ours.
/// </summary>
/// <param name="seed">Seed of the differences between items.</param>
public sealed class PowerTransfer(int seed) : ITruth
{
    private const double Fall = 0.5;
    private const double FirstDays = 1;
    private const double Growth = 2.5;
    private const double Lost = 0.45;
    private const double Share = 0.2;
    private const double ItemSpread = 0.3;
    private readonly Dictionary<ItemKey, (double Last, double Days, double Rate)> _items = [];
    private readonly Random _random = new(seed);

    /// <inheritdoc/>
    public double Recall(ItemKey item, double time) =>
        _items.TryGetValue(item, out var state) ? Math.Pow(1 + (Math.Max(0, time - state.Last) / state.Days), -Fall) : 0;

    /// <inheritdoc/>
    public void Practise(ItemKey item, double time, bool isRecalled)
    {
        double recall = Recall(item, time);
        if (!_items.TryGetValue(item, out var state))
        {
            double rate = Math.Exp(ItemSpread * Chances.Normal(_random));
            state = (time, FirstDays * rate, rate);
        }

        double factor = isRecalled ? 1 + (Growth * state.Rate * (1 - recall)) : Lost;
        _items[item] = (time, Math.Max(FirstDays * state.Rate, state.Days * factor), state.Rate);
        foreach (Direction direction in Directions.All)
        {
            ItemKey sibling = item with { Direction = direction };
            if (direction != item.Direction && _items.TryGetValue(sibling, out var other))
            {
                double gained = 1 + (Share * Growth * other.Rate * (1 - Recall(sibling, time)) * (isRecalled ? 1 : 0.5));
                // Strengthened in part: a part of the time since it was last practised is made good.
                _items[sibling] = (other.Last + (Share * (time - other.Last)), other.Days * gained, other.Rate);
            }
        }
    }
}
