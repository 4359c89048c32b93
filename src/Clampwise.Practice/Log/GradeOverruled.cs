namespace Clampwise.Practice;

/// <summary>The player knows better how well it went. The latest overruling of an attempt counts.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="At">When it happened, UTC.</param>
/// <param name="Attempt">The attempt whose grade is changed.</param>
/// <param name="Grade">The grade that counts from now on.</param>
public sealed record GradeOverruled(EntryId Id, DateTimeOffset At, EntryId Attempt, Grade Grade) : LogEntry(Id, At);
