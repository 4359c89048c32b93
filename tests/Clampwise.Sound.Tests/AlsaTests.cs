using System.Runtime.InteropServices;
using Clampwise.Sound.Files;
using Clampwise.Sound.Players;
using Clampwise.Sound.Strings;
using Clampwise.Theory;

namespace Clampwise.Sound.Tests;

/// <summary>
/// What libasound is given, caught by its own file plugin (ALSA project, PCM plugins: file and null), against the offline rendering.
/// These need Linux with libasound2; without it they are skipped, unless CLAMPWISE_OUTSIDE is 1.
/// </summary>
public class AlsaTests
{
    private static readonly TimeSpan s_patience = TimeSpan.FromSeconds(10);

    [OutsideFact("libasound.so.2")]
    public void What_is_played_live_equals_the_offline_rendering_sample_for_sample()
    {
        string path = Path.Combine(Path.GetTempPath(), $"clampwise-{Environment.ProcessId}.raw");
        Performance strum = Make.Strum(seconds: 0.5);
        float[] expected = Offline.Render(new PluckedGuitar(), strum);
        using (ISoundOut output = SoundSystem.Open(SoundSettings.Standard with { Device = $"file:FILE={path},FORMAT=raw" }, s_patience))
        {
            Assert.Null(output.Notice);
            Assert.True(output.IsAudible);
            // The plugin takes frames as fast as they come; after the last sounding one the player sends some seconds of silence.
            output.Play(strum);
            long before = new FileInfo(path).Length;
            long after = before + (sizeof(float) * (expected.Length + (2L * SampleRate.Standard.Hertz)));
            Assert.True(SpinWait.SpinUntil(() => new FileInfo(path).Length > after, s_patience));
        }

        float[] heard = MemoryMarshal.Cast<byte, float>(File.ReadAllBytes(path)).ToArray();
        File.Delete(path);
        int start = Array.FindIndex(heard, sample => sample != 0f) & ~1;
        int first = Array.FindIndex(expected, sample => sample != 0f) & ~1;
        Assert.Equal(expected[first..], heard[start..(start + expected.Length - first)]);
        Assert.All(heard[(start + expected.Length - first)..], sample => Assert.Equal(0f, sample));
    }

    [OutsideFact("libasound.so.2")]
    public void A_device_that_is_not_there_is_a_notice()
    {
        using ISoundOut output = SoundSystem.Open(SoundSettings.Standard with { Device = "nowhere" }, s_patience);
        Assert.False(output.IsAudible);
        Assert.Equal("no sound: there is no sound device 'nowhere': plug one in, or name another in the settings", output.Notice);
        output.Play(Make.Strum());
        output.Stop();
    }
}
