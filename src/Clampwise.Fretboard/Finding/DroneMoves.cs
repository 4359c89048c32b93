using System.Collections.Immutable;

namespace Clampwise.Fretboard;

/// <summary>A hand that moves under ringing strings: where on the neck it makes sense.</summary>
public static class DroneMoves
{
    /// <summary>
    /// The voicings of the same fingers along the neck, above every clamp and up to the end of the usual space, that are chords of the key or
    /// colours of them, over whatever rings lowest; the lowest fret first.
    /// </summary>
    /// <param name="voicing">The hand, wherever it stands. Without a finger it moves nowhere.</param>
    public static ImmutableArray<Voicing> Of(Voicing voicing)
    {
        Setup setup = voicing.Setup;
        Fret[] fingers = [.. voicing.Fretting.Stops.Where(stop => stop.IsFretted).Select(stop => stop.Finger!.Value)];
        if (fingers.Length == 0)
        {
            return [];
        }

        var ranks = new KeyRanks(setup);
        int first = setup.Clamps.Select(clamp => clamp.Fret.Number).DefaultIfEmpty(0).Max() + 1;
        int last = FrettingSpace.UsualFor(setup.StringCount).MaxFret.Number - (fingers.Max() - fingers.Min());
        return
        [
            .. Enumerable.Range(first, Math.Max(0, last - first + 1))
                .Select(fret => Moved(voicing, fret - fingers.Min().Number))
                .Where(moved => ranks.IsOfKey(KeyOf(moved))),
        ];
    }

    private static Voicing Moved(Voicing voicing, int frets) => Voicing.Create(voicing.Setup, Fretting.Of(
        [.. voicing.Fretting.Stops.Select(stop => stop.Finger is { } finger ? StringStop.At(Fret.Of(finger.Number + frets)) : stop)])).Value;

    private static int KeyOf(Voicing voicing) => PackedVoicing.KeyOf(
        voicing.Pitches.Min().Class.Number, voicing.Pitches.Aggregate(0, (bits, pitch) => bits | (1 << pitch.Class.Number)));
}
