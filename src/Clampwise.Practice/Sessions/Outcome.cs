namespace Clampwise.Practice;

/// <summary>One question answered in this session.</summary>
/// <param name="Planned">The item and why it was asked.</param>
/// <param name="Attempt">What went into the log.</param>
/// <param name="Verdict">The verdict; null for an answer from before the session was taken up again.</param>
/// <param name="StabilityBefore">Stability in days before it; null at first sight.</param>
/// <param name="StabilityAfter">Stability in days after it.</param>
public sealed record Outcome(PlannedItem Planned, Attempt Attempt, Verdict? Verdict, double? StabilityBefore, double StabilityAfter);
