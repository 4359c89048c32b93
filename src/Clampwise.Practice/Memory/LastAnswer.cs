namespace Clampwise.Practice;

/// <summary>The answer before: two shapes of a pair are told apart when one is asked straight after the other.</summary>
/// <param name="Item">What was asked.</param>
/// <param name="Day">On which practice day.</param>
/// <param name="IsCorrect">True if it was answered right.</param>
public sealed record LastAnswer(ItemKey Item, PracticeDay Day, bool IsCorrect);
