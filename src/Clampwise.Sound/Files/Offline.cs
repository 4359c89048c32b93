using Clampwise.Theory;

namespace Clampwise.Sound.Files;

/// <summary>Renders performances ahead of time, by the same path as live playing.</summary>
public static class Offline
{
    private const int FramesAtATime = 4096;

    /// <summary>All samples of a performance, interleaved left and right, each within -1 to 1.</summary>
    public static float[] Render(IInstrument instrument, Performance performance, SampleRate rate = default)
    {
        IRendering rendering = instrument.Start(performance, rate);
        var samples = new float[checked(2 * rendering.FrameCount)];
        int done = 0;
        for (int frames = 1; frames > 0 && done < samples.Length; done += 2 * frames)
        {
            frames = rendering.Read(samples.AsSpan(done, Math.Min(2 * FramesAtATime, samples.Length - done)));
        }

        return samples;
    }
}
