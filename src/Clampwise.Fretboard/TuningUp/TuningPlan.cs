using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>
/// How to put a setup in tune after the clamps went on: every string's target, the pairs to compare by ear, and an order.
/// </summary>
public sealed class TuningPlan
{
    private TuningPlan(ImmutableArray<StringTarget> targets, ImmutableArray<TuningPair> pairs, ImmutableArray<StringNumber> order) =>
        (Targets, Pairs, Order) = (targets, pairs, order);

    /// <summary>The targets, lowest string first.</summary>
    public ImmutableArray<StringTarget> Targets { get; }

    /// <summary>All unisons and octaves, those that cross a clamp first, then the closest intervals first.</summary>
    public ImmutableArray<TuningPair> Pairs { get; }

    /// <summary>
    /// The order to tune in: free strings first, which no clamp has moved, then the held ones, each from the lowest string up (a thick
    /// string, once moved, moves the others through the neck; common practice, no source).
    /// </summary>
    public ImmutableArray<StringNumber> Order { get; }

    /// <summary>The plan of a setup.</summary>
    public static TuningPlan Of(Setup setup, ConcertPitch concertPitch = default)
    {
        ImmutableArray<StringTarget> targets = [.. setup.Strings.Select(number =>
            new StringTarget(number, setup.GroundPitch(number), setup.Spell(setup.GroundPitch(number)), concertPitch.Hertz(setup.GroundPitch(number)), setup.IsHeld(number)))];
        var pairs =
            from i in Enumerable.Range(0, targets.Length)
            from j in Enumerable.Range(i + 1, targets.Length - i - 1)
            let pair = PairOf(targets[i], targets[j])
            where pair is not null
            orderby !pair.CrossesClamp, pair.Octaves, pair.Lower descending
            select pair;
        return new TuningPlan(targets, [.. pairs], [.. targets.OrderBy(target => target.IsHeld).Select(target => target.String)]);
    }

    /// <summary>The pairs that a string takes part in.</summary>
    public IEnumerable<TuningPair> PairsOf(StringNumber number) => Pairs.Where(pair => pair.Lower == number || pair.Upper == number);

    // A clamp can make a lower string sound above a higher one, so the pitches decide.
    private static TuningPair? PairOf(StringTarget one, StringTarget other)
    {
        (StringTarget lower, StringTarget upper) = one.Pitch <= other.Pitch ? (one, other) : (other, one);
        int semitones = upper.Pitch - lower.Pitch;
        return semitones % 12 != 0 ? null
            : new TuningPair(lower.String, upper.String, semitones / 12, upper.Hertz, one.IsHeld != other.IsHeld);
    }
}
