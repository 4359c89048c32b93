using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>
/// The major key that a setup is made for, counted from the home clamp: the one whose tonic, fifth and third ring most and lowest, with
/// no open string outside its scale. What counts is common practice, how much is our judgement.
/// </summary>
public static class SuggestedKey
{
    private const int Tonic = 2;
    private const int Fifth = 1;
    private const int Third = 2;
    private const int LowestIsTonic = 2;
    private const int OutsideScale = -2;
    private const int NoTonic = -2;
    private const int FifthSemitones = 7;
    private const int ThirdSemitones = 4;

    /// <summary>The key of the shapes: D for the three-string clamp on strings 3 to 5.</summary>
    public static MusicalKey Of(Setup setup)
    {
        PitchClass[] open = [.. setup.GroundPitches.Select(pitch => pitch.Class + -setup.ShapeShift)];
        PitchClass lowest = setup.GroundPitches.Min().Class + -setup.ShapeShift;
        return s_keys.MaxBy(key => Points(key, open, lowest));
    }

    // The one with the fewest accidentals first, and so chosen among equals.
    private static readonly ImmutableArray<MusicalKey> s_keys = [.. Enumerable.Range(0, PitchClass.Count)
        .Select(up => default(MusicalKey).Up(up)).OrderBy(key => Math.Abs(key.Signature)).ThenByDescending(key => key.Signature)];

    private static int Points(MusicalKey key, PitchClass[] open, PitchClass lowest)
    {
        PitchClass tonic = key.Tonic.Class;
        return open.Sum(note => key.Contains(note) ? PitchClass.SemitonesUp(tonic, note) switch
        {
            0 => Tonic,
            FifthSemitones => Fifth,
            ThirdSemitones => Third,
            _ => 0,
        } : OutsideScale)
            + (lowest == tonic ? LowestIsTonic : 0)
            + (open.Contains(tonic) ? 0 : NoTonic);
    }
}
