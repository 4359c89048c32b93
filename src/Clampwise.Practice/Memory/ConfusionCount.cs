namespace Clampwise.Practice;

/// <summary>How often one shape was taken for another, in any direction.</summary>
/// <param name="Times">How often, ever.</param>
/// <param name="Weight">The same with each time halved for every 30 days before <paramref name="Last"/> (our judgement).</param>
/// <param name="Last">The practice day of the last time.</param>
public readonly record struct ConfusionCount(int Times, double Weight, PracticeDay Last)
{
    private const double HalfLifeDays = 30;
    private const int Enough = 3;

    /// <summary>How often since they were last told apart three times running.</summary>
    public int Open { get; init; }

    /// <summary>How often running they were told apart since: asked one after the other in one direction, and both right.</summary>
    public int Apart { get; init; }

    /// <summary>The direction in which it last happened.</summary>
    public Direction Direction { get; init; }

    /// <summary>The count after one more time.</summary>
    public ConfusionCount After(PracticeDay day, Direction direction) =>
        new(Times + 1, WeightOn(day) + 1, day > Last ? day : Last) { Open = Open + 1, Direction = direction };

    /// <summary>The count after they were asked one after the other.</summary>
    public ConfusionCount Beside(bool areBothRight) => !areBothRight ? this with { Apart = 0 }
        : Apart + 1 < Enough ? this with { Apart = Apart + 1 }
        : this with { Open = 0, Apart = 0 };

    /// <summary>The faded count on a day.</summary>
    public double WeightOn(PracticeDay day) => Weight * Math.Pow(0.5, Math.Max(0, day - Last) / HalfLifeDays);
}
