namespace Clampwise.Practice;

/// <summary>
/// One event of the append-only log that all progress is rebuilt from. Entries are never changed or taken out: what corrects an
/// entry is another entry. Two logs are merged as the union by <see cref="Id"/>, in any order.
/// </summary>
/// <param name="Id">Its identity.</param>
/// <param name="At">When it happened, UTC. For an attempt, when it was answered.</param>
public abstract record LogEntry(EntryId Id, DateTimeOffset At)
{
    /// <summary>The version of the fields below, for migrations.</summary>
    public const int CurrentSchema = 1;

    /// <summary>The version that the entry was written in.</summary>
    public int Schema { get; init; } = CurrentSchema;
}
