using Clampwise.Fretboard;

namespace Clampwise.Sound.Performing;

/// <summary>Turns voicings into performances. A voicing with no sounding string gives silence.</summary>
public static class Perform
{
    // Up strokes touch the bass strings only lightly (common practice); the first string of a stroke takes the most force.
    private const double UpStrokeBass = 0.55;
    private const double StrokeFading = 0.12;
    private const double HandMilliseconds = 3.0;
    private const double HandForce = 0.08;

    /// <summary>All sounding strings, one shortly after the other.</summary>
    public static Performance Strum(Voicing voicing, StrumDirection direction, PlayingStyle style)
    {
        SoundingString[] strings = [.. Sounding(voicing, direction)];
        int count = voicing.Setup.StringCount;
        TimeSpan step = style.StrumTime / Math.Max(1, count - 1);
        int first = strings.Length == 0 ? 0 : PlaceOf(strings[0], count, direction);
        return Of(voicing, style, strings.Select((sounding, index) =>
            Note(sounding, step * (PlaceOf(sounding, count, direction) - first), style.Ring, style.Strength.Times(Force(index, strings.Length, direction)))));
    }

    /// <summary>All sounding strings at once.</summary>
    public static Performance Block(Voicing voicing, PlayingStyle style) =>
        Of(voicing, style, Sounding(voicing, StrumDirection.Down).Select(sounding => Note(sounding, TimeSpan.Zero, style.Ring, style.Strength)));

    /// <summary>The sounding strings one by one in the order of a pattern, ringing on together.</summary>
    public static Performance Arpeggio(Voicing voicing, ArpeggioPattern pattern, PlayingStyle style)
    {
        SoundingString[] strings = [.. Sounding(voicing, StrumDirection.Down)];
        int[] order = strings.Length == 0 ? [] : [.. pattern.Indexes(strings.Length)];
        TimeSpan end = (style.ArpeggioStep * Math.Max(0, order.Length - 1)) + style.Ring;
        return Of(voicing, style, order.Select((index, step) =>
            Note(strings[index], style.ArpeggioStep * step, end - (style.ArpeggioStep * step), style.Strength)));
    }

    /// <summary>One string alone; silence if the voicing mutes it.</summary>
    public static Performance SingleString(Voicing voicing, StringNumber number, PlayingStyle style) =>
        Of(voicing, style, Sounding(voicing, StrumDirection.Down).Where(sounding => sounding.Number == number)
            .Select(sounding => Note(sounding, TimeSpan.Zero, style.Ring, style.Strength)));

    /// <summary>Two voicings in turn, the first damped before the second is strummed.</summary>
    public static Performance InTurn(Voicing first, Voicing second, PlayingStyle style) =>
        Strum(first, StrumDirection.Down, style).Then(Strum(second, StrumDirection.Down, style), style.Ring + style.Gap);

    /// <summary>
    /// Only the strings that differ between two voicings: each as in the first, then as in the second, the lowest string first. A string
    /// that sounds in one of the two only is played there alone. Silence if nothing differs.
    /// </summary>
    public static Performance OnlyWhatDiffers(Voicing first, Voicing second, PlayingStyle style)
    {
        Performance result = Performance.Silence;
        TimeSpan after = TimeSpan.Zero;
        foreach (StringNumber number in first.SoundsOtherwise(second).Strings.Reverse())
        {
            foreach (Voicing voicing in new[] { first, second })
            {
                Performance one = SingleString(voicing, number, style);
                if (one.Notes.Length > 0)
                {
                    result = result.Notes.Length == 0 ? one : result.Then(one, after);
                    after += style.Ring + style.Gap;
                }
            }
        }

        return result;
    }

    private static IEnumerable<SoundingString> Sounding(Voicing voicing, StrumDirection direction)
    {
        IEnumerable<SoundingString> upward = voicing.Strings.Where(sounding => sounding.Pitch is not null);
        return direction == StrumDirection.Down ? upward : upward.Reverse();
    }

    private static int PlaceOf(SoundingString sounding, int count, StrumDirection direction) =>
        direction == StrumDirection.Down ? sounding.Number.IndexAmong(count) : sounding.Number.Number - 1;

    private static double Force(int index, int count, StrumDirection direction)
    {
        double along = count < 2 ? 0.0 : (double)index / (count - 1);
        return direction == StrumDirection.Down ? 1.0 - (StrokeFading * along) : 1.0 - ((1.0 - UpStrokeBass) * along);
    }

    private static PlayedNote Note(SoundingString sounding, TimeSpan start, TimeSpan length, Strength strength) =>
        new(sounding.Number, sounding.Pitch!.Value, sounding.StoppedAt, ContactOf.String(sounding), start, length) { Strength = strength };

    private static Performance Of(Voicing voicing, PlayingStyle style, IEnumerable<PlayedNote> notes)
    {
        if (style.HandSeed is { } seed)
        {
            var hand = new Random(seed);
            notes = notes.Select(note => note with
            {
                Start = note.Start + TimeSpan.FromMilliseconds(HandMilliseconds * hand.NextDouble()),
                Strength = note.Strength.Times(1.0 + (HandForce * (hand.NextDouble() - 0.5))),
            });
        }

        return Performance.Of(notes, voicing.Setup.StringCount, style.Pick, style.ConcertPitch);
    }
}
