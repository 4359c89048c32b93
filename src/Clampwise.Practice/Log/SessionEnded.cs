namespace Clampwise.Practice;

/// <summary>A session was brought to an end, early or not. One that was killed has none; its length is then taken from its attempts.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="At">When it ended, UTC.</param>
/// <param name="Session">The session.</param>
/// <param name="Kind">What kind it was.</param>
/// <param name="Day">The practice day on which it ended.</param>
/// <param name="Practised">Time on its clock: without pauses.</param>
/// <param name="WasCutShort">True if the player ended it before its time.</param>
public sealed record SessionEnded(
    EntryId Id,
    DateTimeOffset At,
    SessionId Session,
    SessionKind Kind,
    PracticeDay Day,
    TimeSpan Practised,
    bool WasCutShort) : LogEntry(Id, At);
