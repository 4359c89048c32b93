namespace Clampwise.Practice;

/// <summary>One practice day.</summary>
/// <param name="Day">The day.</param>
/// <param name="Asked">Questions answered.</param>
/// <param name="RightAnswers">Answered right.</param>
/// <param name="Practised">Time practised.</param>
public sealed record DayFigures(PracticeDay Day, int Asked, int RightAnswers, TimeSpan Practised);
