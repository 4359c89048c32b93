namespace Clampwise.Practice;

/// <summary>
/// The grade of a recall. A right answer is never missed and a wrong one always is; a hint, a likely guess, a slow answer, or
/// a choice of a shape that was never right without choices makes it strained; at first sight nothing is instant.
/// </summary>
public static class Grading
{
    /// <summary>An answer is fast below this slowness: about the fastest quarter of answers (our judgement).</summary>
    public const double FastBelow = -0.65;

    /// <summary>An answer is slow above this slowness: about the slowest ninth of answers (our judgement).</summary>
    public const double SlowAbove = 1.2;

    /// <summary>A right answer counts as known if that is at least so likely.</summary>
    public const double KnownFrom = 0.7;

    /// <summary>The grade.</summary>
    public static Grade Of(Evidence evidence)
    {
        if (!evidence.IsCorrect)
        {
            return Grade.Missed;
        }

        if (evidence.Hints > 0 || evidence.IsOnlyChosen || evidence.Slowness > SlowAbove
            || KnownGivenRight(evidence.RecallBefore, evidence.GuessChance) < KnownFrom)
        {
            return Grade.Strained;
        }

        return evidence.Slowness < FastBelow && !evidence.IsFirstSight ? Grade.Instant : Grade.Steady;
    }

    /// <summary>
    /// The chance that a right answer was known and not guessed: R / (R + c (1 - R)), by Bayes' rule with c the chance of a lucky
    /// guess.
    /// </summary>
    public static double KnownGivenRight(double recall, double guessChance) =>
        guessChance <= 0 ? 1 : recall / (recall + (guessChance * (1 - recall)));
}
