using System.Collections.Immutable;

namespace Clampwise.Fretboard;

/// <summary>The answer to a query in whole hands.</summary>
/// <param name="Total">How many voicings fit, thinnings counted.</param>
/// <param name="Hands">The best hands, best first, as many as the query's limit.</param>
public sealed record FoundHands(int Total, ImmutableArray<FoundHand> Hands);
