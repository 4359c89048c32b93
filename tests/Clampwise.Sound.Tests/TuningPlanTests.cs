using Clampwise.Fretboard;
using Clampwise.Sound.Files;
using Clampwise.Sound.Strings;
using Clampwise.Sound.TuneUp;

namespace Clampwise.Sound.Tests;

public class TuningPlanTests
{
    private static readonly Setup s_setup = Setup.Parse("standard + 2-4@2").Value;

    [Fact]
    public void Targets_follow_the_clamp()
    {
        var plan = TuningPlan.Of(s_setup);
        Assert.Equal("E2 A2 E3 A3 C#4 E4", string.Join(' ', plan.Targets.Select(target => target.Pitch)));
        // Equal temperament at A4 = 440, as any table gives it.
        Assert.Equal([82.41, 110.0, 164.81, 220.0, 277.18, 329.63], plan.Targets.Select(target => Math.Round(target.Hertz, 2)));
        Assert.Equal([6, 5, 1, 4, 3, 2], plan.Order.Select(number => number.Number));
    }

    [Theory]
    [InlineData(415.0)]
    [InlineData(466.0)]
    public void Targets_follow_the_concert_pitch(double a4) =>
        Assert.Equal(a4 / 4.0, TuningPlan.Of(s_setup, ConcertPitch.Of(a4).Value).Targets[1].Hertz, 9);

    [Theory]
    [InlineData(414.9)]
    [InlineData(466.1)]
    [InlineData(double.NaN)]
    public void Other_concert_pitches_are_refused(double a4) =>
        Assert.StartsWith($"A4 at {a4:0.##} Hz is out of range", ConcertPitch.Of(a4).Fault.Message, StringComparison.Ordinal);

    [Fact]
    public void Octaves_across_the_clamp_come_first()
    {
        TuningPair[] pairs = [.. TuningPlan.Of(s_setup).Pairs];
        Assert.Equal(["6-4 1 True", "5-3 1 True", "4-1 1 True", "6-1 2 False"], pairs.Select(pair => $"{pair.Lower}-{pair.Upper} {pair.Octaves} {pair.CrossesClamp}"));
    }

    [Fact]
    public void A_unison_made_by_a_clamp_is_found()
    {
        TuningPair pair = TuningPlan.Of(Setup.Parse("standard + 5@5").Value).Pairs.First(found => found.Octaves == 0);
        Assert.Equal((5, 4), (pair.Lower.Number, pair.Upper.Number));
        Assert.Contains("sound the same pitch", pair.Advice, StringComparison.Ordinal);
    }

    // E2 and E3 out by 5 cents beat at about 0.5 Hz: 164.8 Hz (2^(5/1200) - 1) = 0.48 (standard physics).
    [Fact]
    public void Beats_are_the_difference_of_the_common_partials()
    {
        TuningPair pair = TuningPlan.Of(s_setup).Pairs[0];
        Assert.Equal(0.477, pair.BeatsAt(new Cents(5.0)), 3);
        Assert.Equal(
            "strings 6 and 4 are an octave apart: listen near 165 Hz and turn until the slow swelling stops (5 cents off beat once in 2.1 seconds)",
            pair.Advice);
    }

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
    public void Questions_detune_one_string_and_are_the_same_for_the_same_seed()
    {
        var random = new Random(3);
        DetuneQuestion[] questions = [.. Enumerable.Range(0, 400).Select(_ => DetuneQuestion.Ask(s_setup, DetuneLadder.Start, random))];
        Assert.Equal(questions[0], DetuneQuestion.Ask(s_setup, DetuneLadder.Start, new Random(3)));
        Assert.All(questions, question => Assert.Equal(30.0, Math.Abs(question.Detune.Value)));
        Assert.Equal(6, questions.Select(question => question.String).Distinct().Count());
        Assert.True(questions.Count(question => s_setup.IsHeld(question.String)) > questions.Length / 2);
        PlayedNote[] notes = [.. questions[0].Performance().Notes];
        Assert.All(notes, note => Assert.Equal(note.String == questions[0].String ? questions[0].Detune : Cents.None, note.Detune));
        Assert.Equal(12, notes.Length);
    }

    [Fact]
    public void The_ladder_goes_down_after_two_right_answers_and_up_after_one_wrong_one()
    {
        var question = new DetuneQuestion(s_setup, StringNumber.Of(3), new Cents(30.0));
        DetuneVerdict right = question.Judge(StringNumber.Of(3), isSharp: true);
        DetuneVerdict half = question.Judge(StringNumber.Of(3), isSharp: false);
        Assert.Equal((true, true, true, false), (right.IsStringRight, right.IsAllRight, half.IsStringRight, half.IsAllRight));
        DetuneLadder ladder = DetuneLadder.Start.After(right);
        Assert.Equal(30.0, ladder.Step.Value);
        ladder = ladder.After(right);
        Assert.Equal(22.0, ladder.Step.Value);
        Assert.Equal(30.0, ladder.After(half).Step.Value);
        Assert.Equal(3.0, Enumerable.Range(0, 50).Aggregate(ladder, (on, _) => on.After(right)).Step.Value);
        Assert.Equal(30.0, DetuneLadder.Start.After(half).Step.Value);
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
