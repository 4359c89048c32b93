namespace Clampwise.Practice;

/// <summary>How often one shape was taken for another, in any direction.</summary>
/// <param name="Times">How often, ever.</param>
/// <param name="Weight">The same with each time halved for every 30 days before <paramref name="Last"/> (our judgement).</param>
/// <param name="Last">The practice day of the last time.</param>
public readonly record struct ConfusionCount(int Times, double Weight, PracticeDay Last)
{
    private const double HalfLifeDays = 30;

    /// <summary>The count after one more time.</summary>
    public ConfusionCount After(PracticeDay day) => new(Times + 1, WeightOn(day) + 1, day > Last ? day : Last);

    /// <summary>The faded count on a day.</summary>
    public double WeightOn(PracticeDay day) => Weight * Math.Pow(0.5, Math.Max(0, day - Last) / HalfLifeDays);
}
