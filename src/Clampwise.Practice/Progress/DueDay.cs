namespace Clampwise.Practice;

/// <summary>What falls due on one day.</summary>
/// <param name="Day">The day; the first one holds whatever is overdue.</param>
/// <param name="Count">How many items.</param>
public sealed record DueDay(PracticeDay Day, int Count);
