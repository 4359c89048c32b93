namespace Clampwise.Practice;

/// <summary>A question put aside without an answer: no memory changes.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="At">When it happened, UTC.</param>
/// <param name="Item">What was asked.</param>
/// <param name="Session">The session.</param>
/// <param name="Reason">Why.</param>
public sealed record QuestionSkipped(EntryId Id, DateTimeOffset At, ItemKey Item, SessionId Session, SkipReason Reason) : LogEntry(Id, At);
