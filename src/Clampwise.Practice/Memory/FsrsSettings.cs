using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>What the player may set about the memory model.</summary>
public sealed record FsrsSettings
{
    /// <summary>The lowest desired retention: below it too much is forgotten between two answers.</summary>
    public const double LowestRetention = 0.7;

    /// <summary>The highest desired retention: above it the questions multiply.</summary>
    public const double HighestRetention = 0.97;

    /// <summary>Settings. Throws outside the ranges of <see cref="Create"/>, which is for what a player typed.</summary>
    public FsrsSettings(double desiredRetention = 0.9, bool countsSameDay = true, int maximumIntervalDays = (int)Fsrs.MostStability)
    {
        if (FaultOf(desiredRetention, maximumIntervalDays) is { } fault)
        {
            throw new ArgumentException(fault.Message);
        }

        (DesiredRetention, CountsSameDay, MaximumIntervalDays) = (desiredRetention, countsSameDay, maximumIntervalDays);
    }

    /// <summary>Recall of 90 %, same-day answers on, at most a hundred years.</summary>
    public static FsrsSettings Usual { get; } = new();

    /// <summary>The mean chance of recall that is wished for; for the model's own intervals the chance at which an item is due.</summary>
    public double DesiredRetention { get; }

    /// <summary>True if further answers on one day change the memory's strength.</summary>
    public bool CountsSameDay { get; }

    /// <summary>The longest interval in days, 1 to 36500.</summary>
    public int MaximumIntervalDays { get; }

    /// <summary>Settings, or what is wrong with them.</summary>
    public static Result<FsrsSettings> Create(double desiredRetention, bool countsSameDay, int maximumIntervalDays) =>
        FaultOf(desiredRetention, maximumIntervalDays) is { } fault ? fault : new FsrsSettings(desiredRetention, countsSameDay, maximumIntervalDays);

    private static Fault? FaultOf(double retention, int days) =>
        retention is not (>= LowestRetention and <= HighestRetention) ? PracticeWords.RetentionOutOfRange(retention)
        : days is < 1 or > (int)Fsrs.MostStability ? PracticeWords.IntervalOutOfRange(days)
        : null;
}
