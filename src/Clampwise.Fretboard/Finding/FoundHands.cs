using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>The answer to a query in whole hands.</summary>
/// <param name="Total">How many voicings fit, thinnings counted.</param>
/// <param name="Hands">The best hands, best first, as many as the query's limit.</param>
/// <param name="Key">The key whose chords come first, counted from the home clamp; null where a chord was asked for.</param>
public sealed record FoundHands(int Total, ImmutableArray<FoundHand> Hands, MusicalKey? Key = null);
