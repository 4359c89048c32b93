namespace Clampwise.Practice;

/// <summary>How long a question takes from one to the next.</summary>
public static class Pace
{
    private const double ChangeSeconds = 75;

    /// <summary>Expected time of one question in a direction.</summary>
    public static TimeSpan Of(Direction direction, MemoryState memory) => TimeSpan.FromSeconds(direction == Direction.ChangeInTime
        ? ChangeSeconds
        : memory.UsualTimeIn(direction).Typical.TotalSeconds + memory.UsualRound.Seconds);
}
