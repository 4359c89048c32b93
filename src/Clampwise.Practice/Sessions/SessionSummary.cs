using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>What a session came to.</summary>
/// <param name="Kind">What kind it was.</param>
/// <param name="Practised">Time on its clock.</param>
/// <param name="WasCutShort">True if the player ended it early.</param>
/// <param name="Outcomes">Every answer.</param>
public sealed record SessionSummary(SessionKind Kind, TimeSpan Practised, bool WasCutShort, ImmutableArray<Outcome> Outcomes)
{
    /// <summary>What it was called if its kind does not say it; see <see cref="SessionPlan.Title"/>.</summary>
    public string? Title { get; init; }

    /// <summary>Questions answered.</summary>
    public int Asked => Outcomes.Length;

    /// <summary>Answered right.</summary>
    public int RightAnswers => Outcomes.Count(outcome => outcome.Attempt.IsCorrect);

    /// <summary>How often each grade was given.</summary>
    public ImmutableDictionary<Grade, int> Grades => Enum.GetValues<Grade>().ToImmutableDictionary(
        grade => grade, grade => Outcomes.Count(outcome => outcome.Attempt.Grade == grade));

    /// <summary>Items met for the first time.</summary>
    public int FirstSights => Outcomes.Count(outcome => outcome.StabilityBefore is null);

    /// <summary>What was missed, each item once, the latest first.</summary>
    public ImmutableArray<Outcome> Missed => [.. Outcomes.Where(outcome => !outcome.Attempt.IsCorrect).Reverse().DistinctBy(outcome => outcome.Attempt.Item)];

    /// <summary>What now lasts longer than before, the greatest gain in days first.</summary>
    public ImmutableArray<Outcome> Strengthened =>
        [.. Outcomes.Where(outcome => outcome.StabilityAfter > outcome.StabilityBefore).OrderByDescending(outcome => outcome.StabilityAfter - outcome.StabilityBefore)];

    /// <summary>How many of the items of the repertoire are due on the next practice day.</summary>
    public int DueTomorrow { get; init; }

    /// <summary>One sentence to close with.</summary>
    public string Words => SessionWords.Closing(Asked, RightAnswers, Missed.Length);
}
