using Clampwise.Theory;

namespace Clampwise.Fretboard.Tests;

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
}
