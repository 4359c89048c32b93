using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>A chord that songs in a key are made of.</summary>
/// <param name="Roman">Its degree: <c>I</c>, <c>ii</c>, <c>bVII</c>.</param>
/// <param name="Semitones">How far its root lies above the tonic.</param>
/// <param name="IsMinor">True for a minor triad.</param>
public sealed record KeyDegree(string Roman, int Semitones, bool IsMinor)
{
    private static readonly ImmutableArray<KeyDegree> s_major =
        [new("I", 0, false), new("ii", 2, true), new("iii", 4, true), new("IV", 5, false), new("V", 7, false), new("vi", 9, true), new("bVII", 10, false)];

    private static readonly ImmutableArray<KeyDegree> s_minor =
        [new("i", 0, true), new("III", 3, false), new("iv", 5, true), new("v", 7, true), new("V", 7, false), new("VI", 8, false), new("VII", 10, false)];

    /// <summary>The degrees of a key, in order: the seven of common songs (common practice).</summary>
    public static ImmutableArray<KeyDegree> Of(MusicalKey key) => key.IsMinor ? s_minor : s_major;

    /// <summary>The triad in a key, spelled as the key spells it.</summary>
    public ChordSymbol In(MusicalKey key) =>
        new(key.Spell(key.Tonic.Class + Semitones), IsMinor ? ChordQuality.Parse("m").Value : ChordQuality.Major);
}
