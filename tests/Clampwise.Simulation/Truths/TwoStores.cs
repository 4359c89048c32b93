using Clampwise.Practice;

namespace Clampwise.Simulation;

/// <summary>
/// A fast store that fills at once and empties within days, and a slow one that takes over from it: the emptier the fast store is when
/// something is practised, the more goes into the slow one, and the longer that holds. The form is that of two summed exponentials
/// (the memory chain model: Murre and Chessa 2011, Power laws from individual differences in learning and forgetting,
/// Psychonomic Bulletin and Review 18); the amounts are ours.
/// </summary>
/// <param name="seed">Seed of the differences between items.</param>
public sealed class TwoStores(int seed) : ITruth
{
    private const double FastDays = 4;
    private const double FirstSlowDays = 14;
    private const double Transfer = 0.6;
    private const double Growth = 0.9;
    private const double OnlyRead = 0.6;
    private const double ItemSpread = 0.25;
    private readonly Dictionary<ItemKey, (double Last, double Slow, double Days, double Rate)> _items = [];
    private readonly Random _random = new(seed);

    /// <inheritdoc/>
    public double Recall(ItemKey item, double time) =>
        _items.TryGetValue(item, out var state) ? 1 - ((1 - Fast(time - state.Last)) * (1 - SlowAt(state, time))) : 0;

    /// <inheritdoc/>
    public void Practise(ItemKey item, double time, bool isRecalled)
    {
        bool isNew = !_items.TryGetValue(item, out var state);
        double rate = isNew ? Math.Exp(ItemSpread * Chances.Normal(_random)) : state.Rate;
        double emptiness = isNew ? 1 : 1 - Fast(time - state.Last);
        double slow = isNew ? 0 : SlowAt(state, time);
        double effect = Math.Min(1, Transfer * rate * emptiness * (isRecalled ? 1 : OnlyRead));
        double days = isNew ? FirstSlowDays * rate : state.Days * (1 + (Growth * rate * emptiness * (1 - slow + Growth) * (isRecalled ? 1 : OnlyRead * 0.5)));
        _items[item] = (time, slow + ((1 - slow) * effect), days, rate);
    }

    private static double Fast(double days) => Math.Exp(-days / FastDays);

    private static double SlowAt((double Last, double Slow, double Days, double Rate) state, double time) => state.Slow * Math.Exp(-(time - state.Last) / state.Days);
}
