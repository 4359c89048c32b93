using System.Collections.Immutable;

namespace Clampwise.Fretboard;

/// <summary>The answer to a query.</summary>
/// <param name="Total">How many voicings fit.</param>
/// <param name="Voicings">The best of them, best first, as many as the query's limit.</param>
public sealed record FindResult(int Total, ImmutableArray<FoundVoicing> Voicings);
