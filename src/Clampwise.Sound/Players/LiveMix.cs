using Clampwise.Sound.Blocks;
using Clampwise.Theory;

namespace Clampwise.Sound.Players;

/// <summary>
/// What goes to the device: the performance that plays now, and the ends of those that it interrupted. One thread posts, another fills;
/// neither waits for the other. Filling allocates nothing.
/// </summary>
internal sealed class LiveMix
{
    /// <summary>How long an interrupted performance takes to fade out.</summary>
    public const double FadeSeconds = 0.008;

    private const int MostFading = 8;
    private readonly (IRendering? Rendering, int FramesLeft)[] _fading = new (IRendering?, int)[MostFading];
    private readonly int _fadeFrames;
    private readonly float[] _scratch;
    private IRendering? _posted;
    private IRendering? _current;

    public LiveMix(SampleRate rate)
    {
        _fadeFrames = (int)rate.FrameAt(TimeSpan.FromSeconds(FadeSeconds));
        _scratch = new float[2 * _fadeFrames];
    }

    /// <summary>Puts a performance on; it starts with the next frame that is filled. Null only ends what sounds.</summary>
    public void Post(IRendering? rendering) => Interlocked.Exchange(ref _posted, rendering ?? Nothing.Instance);

    /// <summary>Fills the span with interleaved stereo; false if it is silence and nothing is on.</summary>
    public bool Fill(Span<float> stereo)
    {
        if (Interlocked.Exchange(ref _posted, null) is { } posted)
        {
            LetFade(_current);
            _current = posted;
        }

        int frames = _current?.Read(stereo) ?? 0;
        stereo[(2 * frames)..].Clear();
        if (2 * frames < stereo.Length)
        {
            _current = null;
        }

        bool hasFading = AddFading(stereo);
        return frames > 0 || hasFading;
    }

    private void LetFade(IRendering? interrupted)
    {
        if (interrupted is not null)
        {
            // With all places taken the one that is nearest to silence gives way.
            int place = 0;
            for (int i = 1; i < MostFading; i++)
            {
                place = _fading[i].FramesLeft < _fading[place].FramesLeft ? i : place;
            }

            _fading[place] = (interrupted, _fadeFrames);
        }
    }

    private bool AddFading(Span<float> stereo)
    {
        bool any = false;
        for (int place = 0; place < MostFading; place++)
        {
            if (_fading[place] is { Rendering: { } rendering, FramesLeft: var left })
            {
                any = true;
                int read = rendering.Read(_scratch.AsSpan(0, 2 * Math.Min(left, stereo.Length / 2)));
                Add(stereo, read, left);
                left -= read;
                _fading[place] = left <= 0 || read == 0 ? default : (rendering, left);
            }
        }

        return any;
    }

    private void Add(Span<float> stereo, int frames, int framesLeft)
    {
        for (int i = 0; i < frames; i++)
        {
            // A raised cosine: no corner at either end.
            float gain = 0.5f - (0.5f * MathF.Cos(MathF.PI * (framesLeft - i) / _fadeFrames));
            stereo[2 * i] = SoftCeiling.Bend(stereo[2 * i] + (gain * _scratch[2 * i]));
            stereo[(2 * i) + 1] = SoftCeiling.Bend(stereo[(2 * i) + 1] + (gain * _scratch[(2 * i) + 1]));
        }
    }

    private sealed class Nothing : IRendering
    {
        public static Nothing Instance { get; } = new();

        public long FrameCount => 0;

        public int Read(Span<float> stereo) => 0;
    }
}
