namespace Clampwise.Practice;

/// <summary>One week, Monday to Sunday (ISO 8601).</summary>
/// <param name="Monday">Its first day.</param>
/// <param name="Asked">Questions answered.</param>
/// <param name="RightAnswers">Answered right.</param>
/// <param name="Recall">The share right of first answers of a day to what had been asked on an earlier day, 0 to 1; null if there was none.</param>
/// <param name="Foreseen">What the memory model had foreseen for the same ones, 0 to 1; null if there was none.</param>
/// <param name="Days">Days practised, 0 to 7.</param>
/// <param name="Practised">Time practised.</param>
public sealed record WeekFigures(PracticeDay Monday, int Asked, int RightAnswers, double? Recall, double? Foreseen, int Days, TimeSpan Practised);
