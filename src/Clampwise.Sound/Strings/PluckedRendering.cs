using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Clampwise.Sound.Blocks;
using Clampwise.Theory;

namespace Clampwise.Sound.Strings;

/// <summary>A performance on the computed guitar: strings, body, room.</summary>
internal sealed class PluckedRendering : BlockRendering
{
    private const double RoomTailSeconds = 0.45;
    private readonly List<StringQuad> _quads = [];
    private readonly Vector128<float>[] _sumLeft = new Vector128<float>[BlockFrames];
    private readonly Vector128<float>[] _sumRight = new Vector128<float>[BlockFrames];
    private readonly float[] _bridge = new float[BlockFrames];
    private readonly Body _body;
    private readonly Room _room;

    public PluckedRendering(Performance performance, SampleRate rate) : base(performance, rate)
    {
        (_body, _room) = (new Body(rate), new Room(rate));
        StringVoice[] voices = [.. performance.Notes.Select(note => StringVoice.Of(note, performance, rate))];
        foreach (StringVoice voice in voices)
        {
            Seat(voice);
        }

        _quads.ForEach(quad => quad.Prepare(rate));
        NotesEnd = voices.Length == 0 ? 0 : voices.Max(voice => voice.End) + rate.FrameAt(TimeSpan.FromSeconds(RoomTailSeconds));
    }

    /// <inheritdoc/>
    protected override long NotesEnd { get; }

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    protected override void ComputeBlock(long frame, Span<float> left, Span<float> right)
    {
        Array.Clear(_sumLeft);
        Array.Clear(_sumRight);
        foreach (StringQuad quad in _quads)
        {
            quad.AddBlock(frame, _bridge, _sumLeft, _sumRight);
        }

        for (int i = 0; i < BlockFrames; i++)
        {
            (left[i], right[i]) = (Vector128.Sum(_sumLeft[i]), Vector128.Sum(_sumRight[i]));
            _bridge[i] = left[i] + right[i];
        }

        _body.Process(left, right);
        _room.Process(left, right);
    }

    private void Seat(StringVoice voice)
    {
        // The block in which a voice ends is still its own.
        foreach (StringQuad quad in _quads)
        {
            for (int place = 0; place < LoopLanes.Places; place++)
            {
                if (quad.FreeFrom(place) + BlockFrames <= voice.Start)
                {
                    quad.Add(place, voice);
                    return;
                }
            }
        }

        var added = new StringQuad();
        added.Add(0, voice);
        _quads.Add(added);
    }
}
