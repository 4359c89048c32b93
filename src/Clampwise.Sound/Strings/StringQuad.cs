using System.Runtime.Intrinsics;
using Clampwise.Sound.Blocks;
using Clampwise.Theory;

namespace Clampwise.Sound.Strings;

/// <summary>Two strings at a time, each of two polarisations. Voices take turns in each of the two places, one after another.</summary>
internal sealed class StringQuad
{
    // Small enough that all loops of eight strings together stay stable whatever their decay (the longest rings some 170 passes), large
    // enough that strings an octave apart warm each other up (our judgement).
    private const float BridgeCoupling = 8e-5f;

    // Far below hearing: keeps strings that have rung out away from the numbers that slow processors down (denormal numbers).
    private const float KeepAwake = 1e-18f;

    private const int BlockFrames = BlockRendering.BlockFrames;
    private readonly Queue<StringVoice>[] _waiting = [new(), new()];
    private readonly StringVoice?[] _playing = new StringVoice?[LoopLanes.Places];
    private LoopLanes? _lanes;

    /// <summary>The frame from which a place, 0 or 1, is free.</summary>
    public long FreeFrom(int place) => _waiting[place].Count == 0 ? long.MinValue / 2 : _waiting[place].Last().End;

    /// <summary>Puts a voice in a place, after those that are there.</summary>
    public void Add(int place, StringVoice voice) => _waiting[place].Enqueue(voice);

    /// <summary>Makes room for the longest delay of all voices. Call once, before the first block.</summary>
    public void Prepare(SampleRate rate) =>
        _lanes = new LoopLanes(_waiting.SelectMany(voices => voices).Max(voice => Math.Max(voice.Upright.Delay, voice.Level.Delay)), rate);

    /// <summary>Adds one block that starts at a frame to the sums of left and right.</summary>
    /// <param name="frame">The first frame.</param>
    /// <param name="bridge">How the bridge moved one block earlier; every string on it is shaken a little.</param>
    /// <param name="left">Sums to the left.</param>
    /// <param name="right">Sums to the right.</param>
    public void AddBlock(long frame, ReadOnlySpan<float> bridge, Span<Vector128<float>> left, Span<Vector128<float>> right)
    {
        if (_lanes is not { } lanes || !(Advance(lanes, 0, frame) | Advance(lanes, 1, frame)))
        {
            return;
        }

        ShakeAtBridge(lanes, bridge);
        LayPulse(lanes, 0, frame);
        LayPulse(lanes, 1, frame);
        lanes.Run(lanes.DampingStep(IsDamped(0, frame), IsDamped(1, frame)), left, right);
    }

    private bool IsDamped(int place, long frame) => _playing[place] is { } voice && frame >= voice.Damp;

    // Lets go of a voice that has ended and takes up one that starts within this block.
    private bool Advance(LoopLanes lanes, int place, long frame)
    {
        if (_playing[place] is { } ended && ended.End <= frame)
        {
            _playing[place] = null;
            lanes.Clear(place);
        }

        if (_playing[place] is null && _waiting[place].TryPeek(out StringVoice? next) && next.Start < frame + BlockFrames)
        {
            _playing[place] = _waiting[place].Dequeue();
            lanes.Take(place, next);
        }

        return _playing[place] is not null;
    }

    private void ShakeAtBridge(LoopLanes lanes, ReadOnlySpan<float> bridge)
    {
        float Share(int place) => _playing[place] is null ? 0f : BridgeCoupling;
        var keepAwake = Vector128.Create(KeepAwake);
        var shares = Vector128.Create(Share(0), Share(0), Share(1), Share(1));
        for (int i = 0; i < BlockFrames; i++)
        {
            lanes.Input[i] = (shares * bridge[i]) + keepAwake;
        }
    }

    private void LayPulse(LoopLanes lanes, int place, long frame)
    {
        if (_playing[place] is not { } voice || frame - voice.Start >= voice.Pulse.Length)
        {
            return;
        }

        int sinceStart = (int)(frame - voice.Start);
        (float upright, float level) = StringVoice.Shares;
        for (int i = Math.Max(0, -sinceStart); i < BlockFrames && sinceStart + i < voice.Pulse.Length; i++)
        {
            float sample = voice.Pulse[sinceStart + i];
            lanes.Input[i] += place == 0
                ? Vector128.Create(sample * upright, sample * level, 0f, 0f)
                : Vector128.Create(0f, 0f, sample * upright, sample * level);
        }
    }
}
