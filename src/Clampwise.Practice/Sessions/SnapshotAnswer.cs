namespace Clampwise.Practice;

/// <summary>An answer in a snapshot; the attempt itself stands in the log.</summary>
/// <param name="Attempt">The attempt.</param>
/// <param name="Part">Why it was asked.</param>
/// <param name="StabilityBefore">Stability in days before it; null at first sight.</param>
/// <param name="StabilityAfter">Stability in days after it.</param>
public sealed record SnapshotAnswer(EntryId Attempt, SessionPart Part, double? StabilityBefore, double StabilityAfter)
{
    internal static SnapshotAnswer Of(Outcome outcome) => new(outcome.Attempt.Id, outcome.Planned.Part, outcome.StabilityBefore, outcome.StabilityAfter);

    internal Outcome? In(Repertoire repertoire, Dictionary<EntryId, Attempt> attempts) =>
        attempts.TryGetValue(Attempt, out Attempt? attempt) && repertoire.Find(attempt.Item) is { } item
            ? new Outcome(new PlannedItem(item, Part), attempt, null, StabilityBefore, StabilityAfter)
            : null;
}
