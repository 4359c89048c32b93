namespace Clampwise.Practice;

/// <summary>A clock that can be stopped and taken up again, without a clock of its own: every reading says when it is.</summary>
/// <param name="Gone">Time gone until it was last started or stopped.</param>
/// <param name="Since">When it was last started, on the running clock; null if it stands.</param>
public readonly record struct SessionClock(TimeSpan Gone, TimeSpan? Since)
{
    /// <summary>True if it runs.</summary>
    public bool Runs => Since is not null;

    /// <summary>The time on it.</summary>
    public TimeSpan At(Moment now) => Since is { } since ? Gone + (now.Running - since) : Gone;

    /// <summary>The clock running from now on.</summary>
    public SessionClock Started(Moment now) => Runs ? this : this with { Since = now.Running };

    /// <summary>The clock standing from now on.</summary>
    public SessionClock Stopped(Moment now) => new(At(now), null);
}
