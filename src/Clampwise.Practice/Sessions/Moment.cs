namespace Clampwise.Practice;

/// <summary>
/// An instant on two clocks: the wall clock, which may be set back, for the log; and one that only runs forward, for lengths of
/// time.
/// </summary>
/// <param name="Utc">The wall clock, UTC.</param>
/// <param name="Running">Time on a clock that is never set, since any fixed start.</param>
public readonly record struct Moment(DateTimeOffset Utc, TimeSpan Running)
{
    /// <summary>Now.</summary>
    public static Moment Now(TimeProvider time) => new(time.GetUtcNow(), time.GetElapsedTime(0, time.GetTimestamp()));
}
