namespace Clampwise.Practice;

/// <summary>How the first answers of a later day go: what this player keeps of new items.</summary>
/// <param name="Weight">Answers behind it, the first guess counted as some; at most <see cref="MostWeight"/>.</param>
/// <param name="Right">The share that was known, 0 to 1, luck taken off.</param>
public readonly record struct FirstAnswers(double Weight, double Right)
{
    /// <summary>Older answers fade beyond so many.</summary>
    public const double MostWeight = 40;

    /// <summary>Before any answer: eight at 85 %.</summary>
    public static FirstAnswers Guess { get; } = new(8, 0.85);

    /// <summary>The share with one more answer.</summary>
    internal FirstAnswers After(bool isRight, double luck)
    {
        double weight = Math.Min(Weight + 1, MostWeight);
        // A miss says more than a right answer that may have been luck: known = (right - luck) / (1 - luck).
        double known = isRight ? 1 : -luck / (1 - luck);
        return new FirstAnswers(weight, Right + ((known - Right) / weight));
    }
}
