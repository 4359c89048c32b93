namespace Clampwise.Practice;

/// <summary>What the program expects of the next answer: the item's own memory if it has one, else skill against difficulty.</summary>
public static class Prediction
{
    /// <summary>The chance that it is known, 0 to 1, luck left out.</summary>
    public static double Known(PracticeItem item, MemoryState memory, PracticeDay day) =>
        memory.Recall(item.Key, day) ?? Skill.Chance(memory.RatingIn(item.Key.Direction, item.Family), ItemDifficulty.Of(item), 0);

    /// <summary>The chance of a right answer, 0 to 1: P = c + (1 - c) R with c the chance of a lucky guess.</summary>
    public static double Right(double known, double guessChance) => guessChance + ((1 - guessChance) * known);
}
