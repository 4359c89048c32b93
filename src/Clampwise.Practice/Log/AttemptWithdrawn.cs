namespace Clampwise.Practice;

/// <summary>An answer was undone: the attempt counts for nothing. It cannot be brought back; the question is asked again.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="At">When it happened, UTC.</param>
/// <param name="Attempt">The attempt that was undone.</param>
public sealed record AttemptWithdrawn(EntryId Id, DateTimeOffset At, EntryId Attempt) : LogEntry(Id, At);
