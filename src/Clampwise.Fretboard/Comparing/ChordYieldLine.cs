using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>How many easy voicings two setups give of one chord.</summary>
/// <param name="Chord">The chord at concert pitch.</param>
/// <param name="First">In the first setup.</param>
/// <param name="Second">In the second setup.</param>
public sealed record ChordYieldLine(ChordSymbol Chord, int First, int Second)
{
    /// <summary>In words: <c>E: 14 easy voicings, then 9</c>.</summary>
    public override string ToString() => $"{Chord}: {Spoken.Count(First, "easy voicing")}, then {Spoken.Number(Second)}";
}
