namespace Clampwise.Practice;

/// <summary>What is known of one answer when it is graded.</summary>
/// <param name="IsCorrect">True if it was right.</param>
/// <param name="Hints">Hint steps shown.</param>
/// <param name="GuessChance">The chance of being right by luck: 1/k for one of k choices, 0 for a free answer.</param>
/// <param name="RecallBefore">The chance of recall before the question, 0 to 1.</param>
/// <param name="IsFirstSight">True if the item was never answered before.</param>
/// <param name="Slowness">How slow it was against the player's usual time, in standard deviations of the logarithm.</param>
public readonly record struct Evidence(bool IsCorrect, int Hints, double GuessChance, double RecallBefore, bool IsFirstSight, double Slowness)
{
    /// <summary>True if it was picked from choices and the shape was never right without them.</summary>
    public bool IsOnlyChosen { get; init; }
}
