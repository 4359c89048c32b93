using Clampwise.Fretboard;
using Clampwise.Sound.Files;
using Clampwise.Sound.Strings;
using Clampwise.Sound.TuneUp;
using Clampwise.Theory;

namespace Clampwise.Sound.Tests;

public class TuningTonesTests
{
    private static readonly Setup s_setup = Setup.Parse("standard + 2-4@2").Value;

    // Counted on the samples: the level near the common frequency swells as often as the advice says.
    [Fact]
    public void The_rendered_pair_beats_as_told()
    {
        TuningPair pair = TuningPlan.Of(s_setup).Pairs[0];
        var off = new Cents(15.0);
        float[] samples = Offline.Render(new PluckedGuitar(), TuningTones.Pair(s_setup, pair, off));
        double[] levels = [.. Enumerable.Range(1, 80).Select(i => Level(samples, 0.06 * i, pair.CommonHertz))];
        // Straight decay taken out, the rest goes through zero twice a beat.
        double slope = (levels[^1] - levels[0]) / (levels.Length - 1);
        double[] waves = [.. levels.Select((level, i) => level - levels[0] - (slope * i))];
        double middle = waves.Average();
        int crossings = waves.Zip(waves.Skip(1)).Count(two => two.First < middle != two.Second < middle);
        double beats = pair.BeatsAt(off) * 0.06 * 79;
        Assert.InRange(crossings, (2.0 * beats) - 2.5, (2.0 * beats) + 2.5);
    }

    [Fact]
    public void Reference_tones_sound_from_the_ground()
    {
        Performance tone = TuningTones.Reference(s_setup, StringNumber.Of(3));
        Assert.Equal(("A3", Contact.Clamp, 2), (tone.Notes[0].Pitch.ToString(), tone.Notes[0].Contact, tone.Notes[0].StoppedAt.Number));
    }

    [Fact]
    public void The_open_strings_sound_one_by_one_and_then_together_with_one_of_them_out()
    {
        PlayedNote[] notes = [.. TuningTones.OneByOne(s_setup).Detuned(StringNumber.Of(3), new Cents(30.0)).Notes];
        Assert.Equal(12, notes.Length);
        Assert.All(notes, note => Assert.Equal(note.String == StringNumber.Of(3) ? new Cents(30.0) : Cents.None, note.Detune));
    }

    private static double Level(float[] stereo, double fromSeconds, double hertz)
    {
        int from = (int)(fromSeconds * 44_100);
        const int length = 8_820;
        (double re, double im) = (0.0, 0.0);
        for (int i = 0; i < length; i++)
        {
            double window = 0.5 - (0.5 * Math.Cos(2.0 * Math.PI * i / length));
            double sample = window * (stereo[2 * (from + i)] + stereo[(2 * (from + i)) + 1]);
            re += sample * Math.Cos(2.0 * Math.PI * hertz * i / 44_100);
            im += sample * Math.Sin(2.0 * Math.PI * hertz * i / 44_100);
        }

        return 10.0 * Math.Log10((re * re) + (im * im));
    }
}
