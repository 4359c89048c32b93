namespace Clampwise.Practice;

/// <summary>How long a question takes from one to the next.</summary>
public static class Pace
{
    // Listening, typing, and looking at the verdict (our judgement, until the player's sessions say more).
    private const double AroundSeconds = 7;
    private const double ChangeSeconds = 75;

    /// <summary>Expected time of one question in a direction.</summary>
    public static TimeSpan Of(Direction direction, MemoryState memory) => TimeSpan.FromSeconds(direction == Direction.ChangeInTime
        ? ChangeSeconds
        : memory.UsualTimeIn(direction).Typical.TotalSeconds + AroundSeconds);
}
