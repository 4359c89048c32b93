namespace Clampwise.Practice;

/// <summary>
/// How good the player is at things never asked before, on the logistic scale. Moved by each first answer as in the Elo system
/// for learning: by the surprise, in steps that shrink as answers add up (Pelánek 2016, Applications of the Elo rating system in
/// adaptive educational systems).
/// </summary>
/// <param name="Rating">0 for an even chance at something of difficulty 0.</param>
/// <param name="Answers">How many answers stand behind it.</param>
public readonly record struct Skill(double Rating, int Answers)
{
    private const double FirstStep = 0.8;
    private const double StepDecay = 0.05;

    /// <summary>The chance of a right answer, with the chance of a lucky guess as its floor.</summary>
    /// <param name="rating">The player's rating.</param>
    /// <param name="difficulty">The item's difficulty on the same scale.</param>
    /// <param name="guess">The chance of a lucky guess, 0 to 1.</param>
    public static double Chance(double rating, double difficulty, double guess) => guess + ((1 - guess) / (1 + Math.Exp(difficulty - rating)));

    /// <summary>The skill after one more first answer whose chance had been foreseen.</summary>
    public Skill After(bool isCorrect, double foreseen) =>
        new(Rating + (FirstStep / (1 + (StepDecay * Answers)) * ((isCorrect ? 1 : 0) - foreseen)), Answers + 1);
}
