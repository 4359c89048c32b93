using Clampwise.Theory;

namespace Clampwise.Sound.Blocks;

/// <summary>The metronome: short dying tones, like a wood block, in the middle.</summary>
internal sealed class ClickTrack
{
    private const double PlainHertz = 1150.0;
    private const double AccentedHertz = 1725.0;
    private const double DecaySeconds = 0.05;
    private const double LengthSeconds = 0.06;
    private const double RiseSeconds = 0.001;
    private const double Size = 0.16;
    private readonly (long Start, float[] Samples)[] _clicks;
    private int _first;

    public ClickTrack(Performance performance, SampleRate rate)
    {
        (float[] plain, float[] accented) = (Tone(PlainHertz, rate), Tone(AccentedHertz, rate));
        _clicks = [.. performance.Clicks.Select(click => (rate.FrameAt(click.Start), click.IsAccented ? accented : plain))];
    }

    /// <summary>The frame after the last click.</summary>
    public long End => _clicks.Length == 0 ? 0 : _clicks[^1].Start + _clicks[^1].Samples.Length;

    /// <summary>Adds one block that starts at a frame.</summary>
    public void AddBlock(long frame, Span<float> left, Span<float> right)
    {
        for (int c = _first; c < _clicks.Length && _clicks[c].Start < frame + left.Length; c++)
        {
            (long start, float[] samples) = _clicks[c];
            _first = c == _first && start + samples.Length <= frame ? c + 1 : _first;
            for (int i = (int)Math.Max(0, start - frame); i < left.Length && frame + i - start < samples.Length; i++)
            {
                left[i] += samples[frame + i - start];
                right[i] += samples[frame + i - start];
            }
        }
    }

    private static float[] Tone(double hertz, SampleRate rate)
    {
        var samples = new float[rate.FrameAt(TimeSpan.FromSeconds(LengthSeconds))];
        for (int i = 0; i < samples.Length; i++)
        {
            double seconds = (double)i / rate.Hertz;
            double rise = Math.Min(1.0, seconds / RiseSeconds);
            samples[i] = (float)(Size * rise * Math.Pow(10.0, -3.0 * seconds / DecaySeconds) * Math.Sin(2.0 * Math.PI * hertz * seconds));
        }

        return samples;
    }
}
