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
        PitchClass[] open = [.. setup.GroundPitches.Select(pitch => pitch.Class + -setup.HomeFret.Number)];
        PitchClass lowest = setup.GroundPitches.Min().Class + -setup.HomeFret.Number;
        return Keys().MaxBy(key => Points(key, open, lowest));
    }

    /// <summary>A key so many semitones higher, spelled with the fewest accidentals.</summary>
    public static MusicalKey Up(MusicalKey key, int semitones) =>
        Keys(key.IsMinor).First(one => one.Tonic.Class == key.Tonic.Class + semitones);

    // Of keys that sound alike the one with fewer accidentals, of six sharps and six flats the sharps.
    private static IEnumerable<MusicalKey> Keys(bool isMinor = false) => Enumerable.Range(NoteName.LowestFifths, NoteName.HighestFifths - NoteName.LowestFifths + 1)
        .Select(fifths => MusicalKey.Of(NoteName.FromFifths(fifths), isMinor))
        .Where(key => key.IsGood)
        .Select(key => key.Value)
        .OrderBy(key => Math.Abs(key.Signature))
        .ThenByDescending(key => key.Signature)
        .DistinctBy(key => key.Tonic.Class);

    private static int Points(MusicalKey key, PitchClass[] open, PitchClass lowest)
    {
        PitchClass tonic = key.Tonic.Class;
        var scale = key.Scale.Select(note => note.Class).ToHashSet();
        return open.Sum(note => scale.Contains(note) ? PitchClass.SemitonesUp(tonic, note) switch
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
