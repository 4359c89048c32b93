namespace Clampwise.Practice;

/// <summary>
/// The player's own usual thinking time in one direction, as a running mean and variance of the logarithm of seconds: times of
/// response are near enough log-normal (common practice in the study of response times).
/// </summary>
/// <param name="Weight">How many answers stand behind it, the first guess counted as some; at most <see cref="MostWeight"/>, so that it follows the player.</param>
/// <param name="Mean">Mean of ln(seconds).</param>
/// <param name="Variance">Variance of ln(seconds).</param>
public readonly record struct UsualTime(double Weight, double Mean, double Variance)
{
    /// <summary>Older answers fade beyond so many.</summary>
    public const double MostWeight = 100;

    private const double FirstWeight = 8;
    private const double FirstSpread = 0.6;
    private const double LeastSpread = 0.3;
    private static readonly TimeSpan s_least = TimeSpan.FromSeconds(0.2);
    private static readonly TimeSpan s_most = TimeSpan.FromMinutes(2);

    /// <summary>The usual time itself.</summary>
    public TimeSpan Typical => TimeSpan.FromSeconds(Math.Exp(Mean));

    /// <summary>The first guess for a direction, until the player's own answers weigh more (our judgement).</summary>
    public static UsualTime FirstGuess(Direction direction) => new(FirstWeight, Math.Log(direction.Facts().Seconds), FirstSpread * FirstSpread);

    /// <summary>How much slower than usual a time is, in standard deviations of the logarithm; negative if faster.</summary>
    public double Slowness(TimeSpan thinking) => (LogSeconds(thinking) - Mean) / Math.Max(Math.Sqrt(Variance), LeastSpread);

    /// <summary>The usual time with one more answer counted.</summary>
    public UsualTime After(TimeSpan thinking)
    {
        double weight = Math.Min(Weight + 1, MostWeight);
        double share = 1 / weight;
        double away = LogSeconds(thinking) - Mean;
        return new UsualTime(weight, Mean + (share * away), (1 - share) * (Variance + (share * away * away)));
    }

    private static double LogSeconds(TimeSpan thinking)
    {
        TimeSpan limited = thinking < s_least ? s_least : thinking > s_most ? s_most : thinking;
        return Math.Log(limited.TotalSeconds);
    }
}
