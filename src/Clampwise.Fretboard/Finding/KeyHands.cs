using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>What is worth having in a setup for a key: two or three hands for each of its degrees.</summary>
/// <param name="Key">The key counted from the home clamp.</param>
/// <param name="SoundingKey">The key at concert pitch.</param>
/// <param name="Degrees">The degrees in order.</param>
public sealed record KeyHands(MusicalKey Key, MusicalKey SoundingKey, ImmutableArray<DegreeHands> Degrees);
