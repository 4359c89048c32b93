namespace Clampwise.Practice;

/// <summary>What the program expects of the next answer: the item's own memory if it has one, else skill against difficulty.</summary>
public static class Prediction
{
    // Practice in one way of asking helps another in part: d = .40 (Pan and Rickard 2018), times pi / sqrt 3 on the logistic scale.
    private const double Transfer = 0.73;

    /// <summary>The chance that it is known, 0 to 1, luck left out.</summary>
    public static double Known(PracticeItem item, MemoryState memory, PracticeDay day) => memory.Recall(item.Key, day) ?? AtFirstSight(item, memory, day);

    private static double AtFirstSight(PracticeItem item, MemoryState memory, PracticeDay day)
    {
        double siblings = Directions.All.Max(direction => memory.Recall(item.Key with { Direction = direction }, day) ?? 0);
        return Skill.Chance(memory.RatingIn(item.Key.Direction, item.Family) + (Transfer * siblings), ItemDifficulty.Of(item), 0);
    }

    /// <summary>The chance of a right answer, 0 to 1: P = c + (1 - c) R with c the chance of a lucky guess.</summary>
    public static double ChanceOfRight(double known, double guessChance) => guessChance + ((1 - guessChance) * known);
}
