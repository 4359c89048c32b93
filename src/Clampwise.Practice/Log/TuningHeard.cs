using Clampwise.Fretboard;

namespace Clampwise.Practice;

/// <summary>A setup was heard with one string out of tune, and the player said which and which way. No shape's memory changes.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="At">When it was answered, UTC.</param>
/// <param name="Setup">Setup text.</param>
/// <param name="String">The string that was out.</param>
/// <param name="Cents">By how much, in cents; sharp above zero.</param>
/// <param name="IsStringRight">The right string was named.</param>
/// <param name="IsAllRight">The right string and the right way.</param>
public sealed record TuningHeard(EntryId Id, DateTimeOffset At, string Setup, StringNumber String, double Cents, bool IsStringRight, bool IsAllRight)
    : LogEntry(Id, At);
