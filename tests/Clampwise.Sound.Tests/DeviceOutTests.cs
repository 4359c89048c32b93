using System.Collections.Concurrent;
using Clampwise.Sound.Files;
using Clampwise.Sound.Players;
using Clampwise.Sound.Strings;
using Clampwise.Theory;

namespace Clampwise.Sound.Tests;

public class DeviceOutTests
{
    private static readonly TimeSpan s_patience = TimeSpan.FromSeconds(20);

    [Fact]
    public void What_is_played_reaches_the_device()
    {
        var device = new FakeDevice();
        using DeviceOut output = Open(device);
        Performance strum = Make.Strum(seconds: 0.2);
        float[] expected = Offline.Render(new PluckedGuitar(), strum);
        output.Play(strum);
        float[] wanted = [.. expected.SkipWhile(sample => sample == 0f)];
        float[] heard = [];
        // A rest may come before the strum; it is over only when all of it has been heard.
        Assert.True(SpinWait.SpinUntil(() => (heard = [.. device.Heard.SkipWhile(sample => sample == 0f)]).Length >= wanted.Length, s_patience));
        Assert.Equal(wanted, heard[..wanted.Length]);
    }

    [Fact]
    public void A_device_that_does_not_open_is_a_notice_and_opens_when_it_can()
    {
        var device = new FakeDevice { Refusal = new Fault("the device is away") };
        using DeviceOut output = Open(device);
        Assert.Equal("no sound: the device is away", output.Notice);
        Assert.False(output.IsAudible);
        device.Refusal = null;
        output.Play(Make.Strum(seconds: 0.1));
        Assert.True(SpinWait.SpinUntil(() => output.IsAudible && output.Notice is null, s_patience));
    }

    [Fact]
    public void Unplugging_is_a_notice_and_the_next_strum_tries_again()
    {
        var device = new FakeDevice();
        using DeviceOut output = Open(device);
        int changes = 0;
        output.Changed += (_, _) => Interlocked.Increment(ref changes);
        device.Loss = new Fault("pulled out");
        output.Play(Make.Strum(seconds: 0.1));
        Assert.True(SpinWait.SpinUntil(() => !output.IsAudible, s_patience));
        Assert.Equal("no sound: pulled out", output.Notice);
        device.Loss = null;
        output.Play(Make.Strum(seconds: 0.1));
        Assert.True(SpinWait.SpinUntil(() => output.IsAudible && device.Heard.Any(sample => sample != 0f), s_patience));
        Assert.True(Volatile.Read(ref changes) >= 2);
    }

    [Fact]
    public void A_driver_that_throws_is_a_notice()
    {
        var device = new FakeDevice { IsBroken = true };
        using DeviceOut output = Open(device);
        Assert.Equal("no sound: the sound driver failed: broken", output.Notice);
    }

    [Fact]
    public void Ending_the_program_in_the_middle_of_a_strum_fades_it_out()
    {
        var device = new FakeDevice { Paces = true };
        using (DeviceOut output = Open(device))
        {
            output.Play(Make.Strum(strength: 1.0));
            Assert.True(SpinWait.SpinUntil(() => device.Heard.Length > 30_000, s_patience));
        }

        Assert.Equal(0f, device.Heard[^1]);
        Assert.True(device.Heard[^1400..].Max(Math.Abs) > 0f);
    }

    [Fact]
    public void A_device_that_hangs_holds_up_nobody()
    {
        using var gate = new ManualResetEventSlim();
        var device = new FakeDevice { HangsOn = gate };
        var output = new DeviceOut(device, new PluckedGuitar(), SoundSettings.Standard);
        Assert.False(output.WaitForAnswer(TimeSpan.Zero));
        Assert.Equal("the sound device has not answered yet", output.Notice);
        output.Play(Make.Strum());
        output.Stop();
        output.Dispose();
        gate.Set();
    }

    [Fact]
    public void The_silent_player_says_why()
    {
        using ISoundOut output = SoundSystem.Open(SoundSettings.Standard with { IsOn = false }, TimeSpan.Zero);
        output.Play(Make.Strum());
        Assert.Equal((false, "sound is switched off in the settings"), (output.IsAudible, output.Notice));
    }

    [Fact]
    public void A_soundfont_that_cannot_be_played_leaves_the_computed_guitar()
    {
        Result<IInstrument> loaded = SoundSystem.LoadInstrument(SoundSettings.Standard with { SoundFontPath = "no-such-file.sf2" });
        Assert.StartsWith("the SoundFont no-such-file.sf2 can't be read: ", loaded.Fault.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(19)]
    [InlineData(101)]
    public void Latencies_out_of_range_are_refused(int milliseconds) =>
        Assert.Equal($"a latency of {milliseconds} ms is out of range: use 20 to 100", SoundSettings.Standard.WithLatency(milliseconds).Fault.Message);

    [Fact]
    public void The_captured_player_keeps_what_was_played()
    {
        using var output = new CapturedOut();
        output.Play(Make.Strum());
        output.Stop();
        Assert.Equal((1, 1), (output.Played.Count, output.Stops));
        Assert.Equal(Make.Strum(), output.Played[0]);
    }

    private static DeviceOut Open(FakeDevice device)
    {
        var output = new DeviceOut(device, new PluckedGuitar(), SoundSettings.Standard);
        Assert.True(output.WaitForAnswer(s_patience));
        return output;
    }

    private sealed class FakeDevice : ISoundDevice
    {
        private readonly ConcurrentQueue<float> _heard = new();

        public volatile Fault? Refusal;

        public volatile Fault? Loss;

        public ManualResetEventSlim? HangsOn { get; init; }

        public bool IsBroken { get; init; }

        public bool Paces { get; init; }

        public float[] Heard => [.. _heard];

        public int Rests { get; private set; }

        public Fault? Open(SampleRate rate, TimeSpan latency)
        {
            HangsOn?.Wait();
            return IsBroken ? throw new InvalidOperationException("broken") : Refusal;
        }

        public Fault? Write(ReadOnlySpan<float> stereo)
        {
            if (Paces)
            {
                Thread.SpinWait(100_000);
            }

            foreach (float sample in stereo)
            {
                _heard.Enqueue(sample);
            }

            return Loss;
        }

        public void Rest() => Rests++;

        public void Dispose()
        {
        }
    }
}
