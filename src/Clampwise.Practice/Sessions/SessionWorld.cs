namespace Clampwise.Practice;

/// <summary>What stays the same for the length of a session.</summary>
/// <param name="Repertoire">What can be asked.</param>
/// <param name="Calendar">Which practice day an instant belongs to.</param>
/// <param name="Options">How questions are put.</param>
public sealed record SessionWorld(Repertoire Repertoire, PracticeCalendar Calendar, QuestionOptions Options);
