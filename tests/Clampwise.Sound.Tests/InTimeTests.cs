using Clampwise.Sound.Files;
using Clampwise.Sound.Performing;
using Clampwise.Sound.Strings;
using Clampwise.Theory;

namespace Clampwise.Sound.Tests;

public class InTimeTests
{
    private static readonly Tempo s_tempo = Tempo.Of(120.0).Value;

    [Fact]
    public void Clicks_come_on_the_beat_and_bars_are_accented()
    {
        Performance clicks = InTime.Metronome(s_tempo, 5, 4);
        Assert.Equal([0.0, 0.5, 1.0, 1.5, 2.0], clicks.Clicks.Select(click => click.Start.TotalSeconds));
        Assert.Equal([true, false, false, false, true], clicks.Clicks.Select(click => click.IsAccented));
    }

    [Fact]
    public void A_click_is_heard_at_its_frame_and_nothing_before()
    {
        float[] samples = Offline.Render(new PluckedGuitar(), InTime.Metronome(s_tempo, 3, 4));
        int last = Array.FindLastIndex(samples, sample => Math.Abs(sample) > 0.01f) / 2;
        Assert.InRange(last, 44_100, 44_100 + 2_646);
        Assert.All(samples[(2 * 3_000)..(2 * 22_050)], sample => Assert.Equal(0f, sample, 1e-5f));
        Assert.True(samples[(2 * 22_050)..(2 * 22_500)].Max(Math.Abs) > 0.05f);
    }

    [Fact]
    public void Changes_start_after_the_count_in()
    {
        (Fretboard.Voicing, int)[] changes = [(Make.Voicing("2-4@2", "004400"), 4), (Make.Voicing("2-4@2", "x04000"), 2)];
        Performance performance = InTime.Changes(changes, s_tempo, PlayingStyle.Standard);
        Assert.Equal(10, performance.Clicks.Length);
        Assert.Equal(2.0, performance.Notes[0].Start.TotalSeconds);
        Assert.Equal(4.0, performance.Notes[6].Start.TotalSeconds);
        Assert.Equal(9.0, performance.Slower(2.0).Clicks[^1].Start.TotalSeconds);
    }

    [Theory]
    [InlineData(19.0)]
    [InlineData(301.0)]
    public void Other_tempos_are_refused(double beats) =>
        Assert.Equal($"a tempo of {beats} is out of range: use 20 to 300 beats a minute", Tempo.Of(beats).Fault.Message);
}
