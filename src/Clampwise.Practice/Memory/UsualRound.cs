namespace Clampwise.Practice;

/// <summary>How long this player's questions take beside the thinking: listening, typing, reading the verdict.</summary>
/// <param name="Weight">Answers behind it, the first guess counted as some; at most <see cref="MostWeight"/>.</param>
/// <param name="Seconds">The mean.</param>
public readonly record struct UsualRound(double Weight, double Seconds)
{
    /// <summary>Older answers fade beyond so many.</summary>
    public const double MostWeight = 200;

    // Whoever takes longer from one answer to the next was away.
    private static readonly TimeSpan s_most = TimeSpan.FromSeconds(60);

    /// <summary>The first guess: seven seconds (our judgement).</summary>
    public static UsualRound Guess { get; } = new(10, 7);

    /// <summary>The mean with one more answer.</summary>
    /// <param name="sinceLast">Since the answer before.</param>
    /// <param name="thinking">How long of it the player thought.</param>
    internal UsualRound After(TimeSpan sinceLast, TimeSpan thinking)
    {
        if (sinceLast <= thinking || sinceLast > s_most)
        {
            return this;
        }

        double weight = Math.Min(Weight + 1, MostWeight);
        return new UsualRound(weight, Seconds + (((sinceLast - thinking).TotalSeconds - Seconds) / weight));
    }
}
