using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Clampwise.Sound.Strings;

/// <summary>A performance on the computed guitar: strings, body, room, ceiling, block by block.</summary>
internal sealed class PluckedRendering : IRendering
{
    private const int Block = StringQuad.BlockFrames;
    private const double RoomTailSeconds = 0.45;
    private const double FadeSeconds = 0.05;
    private readonly List<StringQuad> _quads = [];
    private readonly Vector128<float>[] _sumLeft = new Vector128<float>[Block];
    private readonly Vector128<float>[] _sumRight = new Vector128<float>[Block];
    private readonly float[] _left = new float[Block];
    private readonly float[] _right = new float[Block];
    private readonly float[] _bridge = new float[Block];
    private readonly Body _body;
    private readonly Room _room;
    private readonly long _fadeFrames;
    private long _frame;

    public PluckedRendering(Performance performance, SampleRate rate)
    {
        (_body, _room) = (new Body(rate), new Room(rate));
        StringVoice[] voices = [.. performance.Notes.Select(note => StringVoice.Of(note, performance, rate))];
        foreach (StringVoice voice in voices)
        {
            Seat(voice, rate);
        }

        _quads.ForEach(quad => quad.Prepare());
        _fadeFrames = rate.FrameAt(TimeSpan.FromSeconds(FadeSeconds));
        FrameCount = voices.Length == 0 ? 0 : voices.Max(voice => voice.End) + rate.FrameAt(TimeSpan.FromSeconds(RoomTailSeconds));
    }

    /// <inheritdoc/>
    public long FrameCount { get; }

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public int Read(Span<float> stereo)
    {
        int frames = (int)Math.Min(stereo.Length / 2, FrameCount - _frame);
        for (int i = 0; i < frames; i++, _frame++)
        {
            int within = (int)(_frame % Block);
            if (within == 0)
            {
                ComputeBlock();
            }

            stereo[2 * i] = _left[within];
            stereo[(2 * i) + 1] = _right[within];
        }

        return frames;
    }

    private void Seat(StringVoice voice, SampleRate rate)
    {
        // The block in which a voice ends is still its own.
        foreach (StringQuad quad in _quads)
        {
            for (int place = 0; place < 2; place++)
            {
                if (quad.FreeFrom(place) + Block <= voice.Start)
                {
                    quad.Add(place, voice);
                    return;
                }
            }
        }

        var added = new StringQuad(rate);
        added.Add(0, voice);
        _quads.Add(added);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void ComputeBlock()
    {
        Array.Clear(_sumLeft);
        Array.Clear(_sumRight);
        foreach (StringQuad quad in _quads)
        {
            quad.AddBlock(_frame, _bridge, _sumLeft, _sumRight);
        }

        for (int i = 0; i < Block; i++)
        {
            (_left[i], _right[i]) = (Vector128.Sum(_sumLeft[i]), Vector128.Sum(_sumRight[i]));
            _bridge[i] = _left[i] + _right[i];
        }

        _body.Process(_left, _right);
        _room.Process(_left, _right);
        for (int i = 0; i < Block; i++)
        {
            float fade = Math.Clamp((float)(FrameCount - _frame - i) / _fadeFrames, 0f, 1f);
            (_left[i], _right[i]) = (SoftCeiling.Bend(_left[i]) * fade, SoftCeiling.Bend(_right[i]) * fade);
        }
    }
}
