using Clampwise.Sound.Files;
using Clampwise.Sound.Players;
using Clampwise.Sound.Strings;
using Clampwise.Theory;

namespace Clampwise.Sound.Tests;

public class LiveMixTests
{
    private static readonly PluckedGuitar s_guitar = new();
    private static readonly SampleRate s_rate = SampleRate.Standard;

    [Theory]
    [InlineData(353)]
    [InlineData(64)]
    [InlineData(2048)]
    public void A_performance_alone_comes_out_as_rendered_offline(int block)
    {
        Performance strum = Make.Strum(seconds: 0.3);
        float[] expected = Offline.Render(s_guitar, strum);
        var mix = new LiveMix(s_rate);
        mix.Post(s_guitar.Start(strum, s_rate));
        Assert.Equal(expected, Filled(mix, expected.Length / 2, block));
        Assert.False(mix.Fill(new float[2 * block]));
    }

    [Fact]
    public void A_second_strum_interrupts_the_first_without_a_click()
    {
        var mix = new LiveMix(s_rate);
        mix.Post(s_guitar.Start(Make.Strum("022100", strength: 1.0), s_rate));
        float[] before = Filled(mix, 25 * 353, 353);
        mix.Post(s_guitar.Start(Make.Strum("x02210", strength: 1.0), s_rate));
        float[] after = Filled(mix, s_rate.Hertz / 5, 353);
        float[] second = Offline.Render(s_guitar, Make.Strum("x02210", strength: 1.0));
        // What is there besides the second strum is the first one fading: no jump at the seam, nothing left after 8 ms.
        float[] rest = [.. after.Zip(second, (all, own) => all - own)];
        float[] seam = [.. before[^400..], .. rest[..2000]];
        Assert.True(Bend(seam, 200, 600) < 1.5 * Bend(before, before.Length / 2 - 4000, before.Length / 2), "seam");
        Assert.All(rest[(2 * 353)..], sample => Assert.Equal(0f, sample));
    }

    [Fact]
    public void A_player_who_hammers_the_key_gets_no_click_and_no_overload()
    {
        var mix = new LiveMix(s_rate);
        var all = new List<float>();
        for (int i = 0; i < 40; i++)
        {
            mix.Post(s_guitar.Start(Make.Strum(strength: 1.0), s_rate));
            all.AddRange(Filled(mix, 64, 64));
        }

        Assert.True(all.Max(Math.Abs) < 1f);
    }

    [Fact]
    public void Stopping_fades_out()
    {
        var mix = new LiveMix(s_rate);
        mix.Post(s_guitar.Start(Make.Strum(), s_rate));
        Filled(mix, 25 * 353, 353);
        mix.Post(null);
        float[] after = Filled(mix, 1000, 353);
        Assert.True(after[..20].Max(Math.Abs) > 0f);
        Assert.All(after[(2 * 353)..], sample => Assert.Equal(0f, sample));
    }

    [Fact]
    public void Filling_allocates_nothing()
    {
        var mix = new LiveMix(s_rate);
        var block = new float[2 * 353];
        mix.Post(s_guitar.Start(Make.Strum(), s_rate));
        mix.Fill(block);
        mix.Post(s_guitar.Start(Make.Strum(), s_rate));
        // The runtime may allocate now and then on its own account (just-in-time code changing over); what the mix allocates comes each time.
        long least = Enumerable.Range(0, 5).Min(_ => Allocated(() =>
        {
            for (int i = 0; i < 20; i++)
            {
                mix.Fill(block);
            }
        }));
        Assert.Equal(0, least);
    }

    private static long Allocated(Action act)
    {
        long before = GC.GetAllocatedBytesForCurrentThread();
        act();
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }

    private static float[] Filled(LiveMix mix, int frames, int block)
    {
        var all = new List<float>();
        var buffer = new float[2 * block];
        while (all.Count < 2 * frames)
        {
            mix.Fill(buffer);
            all.AddRange(buffer);
        }

        return [.. all.Take(2 * frames)];
    }

    private static double Bend(float[] stereo, int fromFrame, int toFrame) => Enumerable.Range(fromFrame, toFrame - fromFrame)
        .Max(i => Math.Abs(stereo[2 * i] - (2.0 * stereo[2 * (i - 1)]) + stereo[2 * (i - 2)]));
}
