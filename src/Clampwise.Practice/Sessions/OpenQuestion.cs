namespace Clampwise.Practice;

/// <summary>The question that is open.</summary>
/// <param name="Planned">Its place in the plan.</param>
/// <param name="Question">The question.</param>
public sealed record OpenQuestion(PlannedItem Planned, Question Question)
{
    /// <summary>The id of the attempt to come; null until the question is shown.</summary>
    public EntryId? Id { get; init; }

    /// <summary>When it was shown, UTC.</summary>
    public DateTimeOffset ShownAt { get; init; }

    /// <summary>Time since it was shown, stops taken off.</summary>
    public SessionClock Clock { get; init; }

    /// <summary>Sound played so far.</summary>
    public TimeSpan Sound { get; init; }

    /// <summary>Hints shown so far.</summary>
    public int Hints { get; init; }

    /// <summary>
    /// Thinking time: without sound and without typing or placing. Whoever answers before the sound is over has thought for no
    /// time at all.
    /// </summary>
    public TimeSpan ThinkingAt(Moment now, TimeSpan entry)
    {
        TimeSpan thinking = Clock.At(now) - Sound - entry;
        return thinking > TimeSpan.Zero ? thinking : TimeSpan.Zero;
    }
}
