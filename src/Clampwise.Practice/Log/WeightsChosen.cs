using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>The memory model's weights were changed, by a fit or by taking one back. The latest choice counts for the whole log.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="At">When it happened, UTC.</param>
/// <param name="Weights">The 21 weights; empty for the published defaults.</param>
/// <param name="Why">What the program says of it, in one sentence.</param>
public sealed record WeightsChosen(EntryId Id, DateTimeOffset At, ImmutableArray<double> Weights, string Why) : LogEntry(Id, At);
