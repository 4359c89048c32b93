using System.Runtime.CompilerServices;
using Clampwise.Theory;

namespace Clampwise.Sound.Blocks;

/// <summary>
/// Renders in blocks of a fixed length from the performance's start on, so that what is read does not depend on how much is read at a
/// time. Bends what is too loud, and fades out at the very end.
/// </summary>
internal abstract class BlockRendering : IRendering
{
    /// <summary>Frames in a block.</summary>
    public const int BlockFrames = 64;

    private const double FadeSeconds = 0.05;
    private readonly float[] _left = new float[BlockFrames];
    private readonly float[] _right = new float[BlockFrames];
    private readonly ClickTrack _clicks;
    private readonly long _fadeFrames;
    private long _frame;
    private int _unread;

    /// <summary>A rendering of a performance's clicks; what else sounds is the heirs' work.</summary>
    protected BlockRendering(Performance performance, SampleRate rate)
    {
        _fadeFrames = rate.FrameAt(TimeSpan.FromSeconds(FadeSeconds));
        _clicks = new ClickTrack(performance, rate);
    }

    /// <inheritdoc/>
    public long FrameCount => Math.Max(NotesEnd, _clicks.End);

    /// <summary>The frame after which no note is left to hear; 0 without notes.</summary>
    protected abstract long NotesEnd { get; }

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public int Read(Span<float> stereo)
    {
        int wanted = (int)Math.Min(stereo.Length / 2, FrameCount - _frame);
        for (int done = 0; done < wanted;)
        {
            if (_unread == 0)
            {
                ComputeBlock(_frame, _left, _right);
                _clicks.AddBlock(_frame, _left, _right);
                Finish();
                _unread = BlockFrames;
            }

            int count = Math.Min(_unread, wanted - done);
            Interleave(BlockFrames - _unread, stereo.Slice(2 * done, 2 * count));
            (_unread, done, _frame) = (_unread - count, done + count, _frame + count);
        }

        return wanted;
    }

    /// <summary>Fills one block that starts at a frame; what was in it before counts for nothing.</summary>
    protected abstract void ComputeBlock(long frame, Span<float> left, Span<float> right);

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Interleave(int from, Span<float> stereo)
    {
        for (int i = 0; i < stereo.Length / 2; i++)
        {
            stereo[2 * i] = _left[from + i];
            stereo[(2 * i) + 1] = _right[from + i];
        }
    }

    private void Finish()
    {
        SoftCeiling.Bend(_left);
        SoftCeiling.Bend(_right);
        long framesLeft = FrameCount - _frame;
        for (int i = 0; i < BlockFrames && framesLeft - i < _fadeFrames; i++)
        {
            float fade = Math.Max(0f, (float)(framesLeft - i) / _fadeFrames);
            _left[i] *= fade;
            _right[i] *= fade;
        }
    }
}
