using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>The 21 weights w0 to w20 of the memory model FSRS-6, each within its published range.</summary>
public sealed class FsrsWeights : IEquatable<FsrsWeights>
{
    /// <summary>How many there are.</summary>
    public const int Count = 21;

    private static readonly double[] s_published =
    [
        0.212, 1.2931, 2.3065, 8.2956, 6.4133, 0.8334, 3.0194, 0.001, 1.8722, 0.1666, 0.796,
        1.4835, 0.0614, 0.2629, 1.6483, 0.6014, 1.8729, 0.5425, 0.0912, 0.0658, 0.1542,
    ];

    private FsrsWeights(ImmutableArray<double> values) => Values = values;

    /// <summary>The published defaults, fitted to the answers of many learners.</summary>
    public static FsrsWeights Default { get; } = new([.. s_published]);

    /// <summary>The lowest value of each weight.</summary>
    public static ImmutableArray<double> Lowest { get; } =
        [.001, .001, .001, .001, 1, .001, .001, .001, 0, 0, .001, .001, .001, .001, 0, 0, 1, 0, 0, 0, .1];

    /// <summary>The highest value of each weight.</summary>
    public static ImmutableArray<double> Highest { get; } =
        [100, 100, 100, 100, 10, 4, 4, .75, 4.5, .8, 3.5, 5, .25, .9, 4, 1, 6, 2, 2, .8, .8];

    /// <summary>The weights, w0 first.</summary>
    public ImmutableArray<double> Values { get; }

    /// <summary>The weight of an index, 0 to 20.</summary>
    public double this[int index] => Values[index];

    /// <summary>Weights from numbers; refused if there are not 21 or one lies outside its range.</summary>
    public static Result<FsrsWeights> Create(IEnumerable<double> weights)
    {
        ImmutableArray<double> values = [.. weights];
        if (values.Length != Count)
        {
            return PracticeWords.WrongWeightCount(values.Length);
        }

        for (int i = 0; i < Count; i++)
        {
            if (!(values[i] >= Lowest[i] && values[i] <= Highest[i]))
            {
                return PracticeWords.WeightOutOfRange(i, values[i], Lowest[i], Highest[i]);
            }
        }

        return new FsrsWeights(values);
    }

    /// <inheritdoc/>
    public bool Equals(FsrsWeights? other) => other is not null && Values.AsSpan().SequenceEqual(other.Values.AsSpan());

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as FsrsWeights);

    /// <inheritdoc/>
    public override int GetHashCode() => Values.Aggregate(0, HashCode.Combine);
}
