using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Clampwise.Sound.Blocks;

namespace Clampwise.Sound.Strings;

/// <summary>
/// Two strings of two polarisations each, computed side by side in the four lanes of one vector. Strings take turns in each of the two
/// places, one after another.
/// </summary>
internal sealed class StringQuad
{
    private const int BlockFrames = BlockRendering.BlockFrames;

    // Small enough that all loops of eight strings together stay stable whatever their decay (the longest rings some 170 passes), large
    // enough that strings an octave apart warm each other up (our judgement).
    private const float BridgeCoupling = 8e-5f;

    // Far below hearing: keeps strings that have rung out away from the numbers that slow processors down (denormal numbers).
    private const float KeepAwake = 1e-18f;

    private const int Lanes = 4;
    private const int Places = 2;
    private readonly Queue<StringVoice>[] _waiting = [new(), new()];
    private readonly StringVoice?[] _playing = new StringVoice?[Places];
    private readonly Vector128<float>[] _input = new Vector128<float>[BlockFrames];
    private readonly Vector128<float>[] _states = new Vector128<float>[LoopDesign.StiffnessStages + 2];
    private readonly int[] _delay = new int[Lanes];
    private readonly int _sampleRate;
    private float[] _line = [];
    private int _mask;
    private int _at;
    private Vector128<float> _loss;
    private Vector128<float> _damped;
    private Vector128<float> _pole;
    private Vector128<float> _stiffness;
    private Vector128<float> _tuning;
    private Vector128<float> _left;
    private Vector128<float> _right;

    public StringQuad(SampleRate rate) => _sampleRate = rate.Hertz;

    /// <summary>The frame from which a place, 0 or 1, is free.</summary>
    public long FreeFrom(int place) => _waiting[place].Count == 0 ? long.MinValue / 2 : _waiting[place].Last().End;

    /// <summary>Puts a voice in a place, after those that are there.</summary>
    public void Add(int place, StringVoice voice) => _waiting[place].Enqueue(voice);

    /// <summary>Makes room for the longest delay of all voices. Call once, before the first block.</summary>
    public void Prepare()
    {
        int longest = _waiting.SelectMany(voices => voices).Max(voice => Math.Max(voice.Upright.Delay, voice.Level.Delay));
        int capacity = (int)System.Numerics.BitOperations.RoundUpToPowerOf2((uint)longest + 1);
        (_line, _mask) = (new float[capacity * Lanes], capacity - 1);
    }

    /// <summary>Adds one block that starts at a frame to the sums of left and right.</summary>
    /// <param name="frame">The first frame.</param>
    /// <param name="bridge">How the bridge moved one block earlier; every string on it is shaken a little.</param>
    /// <param name="left">Sums to the left.</param>
    /// <param name="right">Sums to the right.</param>
    public void AddBlock(long frame, ReadOnlySpan<float> bridge, Span<Vector128<float>> left, Span<Vector128<float>> right)
    {
        bool isSounding = false;
        for (int place = 0; place < Places; place++)
        {
            isSounding |= Advance(place, frame);
        }

        ShakeAtBridge(bridge);
        for (int place = 0; place < Places; place++)
        {
            LayPulse(place, frame);
        }

        if (isSounding)
        {
            Vector128<float> step = DampingStep(frame);
            Run(step, left, right);
        }
    }

    // Lets go of a voice that has ended, takes up one that starts within this block, and lays its pulse out.
    private bool Advance(int place, long frame)
    {
        if (_playing[place] is { } ended && ended.End <= frame)
        {
            _playing[place] = null;
            Clear(place);
        }

        if (_playing[place] is null && _waiting[place].TryPeek(out StringVoice? next) && next.Start < frame + BlockFrames)
        {
            _playing[place] = _waiting[place].Dequeue();
            Clear(place);
            Take(place, next);
        }

        return _playing[place] is not null;
    }

    private void ShakeAtBridge(ReadOnlySpan<float> bridge)
    {
        float Share(int place) => _playing[place] is null ? 0f : BridgeCoupling;
        var keepAwake = Vector128.Create(KeepAwake);
        var shares = Vector128.Create(Share(0), Share(0), Share(1), Share(1));
        for (int i = 0; i < BlockFrames; i++)
        {
            _input[i] = (shares * bridge[i]) + keepAwake;
        }
    }

    private void LayPulse(int place, long frame)
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
            _input[i] += place == 0
                ? Vector128.Create(sample * upright, sample * level, 0f, 0f)
                : Vector128.Create(0f, 0f, sample * upright, sample * level);
        }
    }

    private void Take(int place, StringVoice voice)
    {
        TakeLoop(2 * place, voice.Upright);
        TakeLoop((2 * place) + 1, voice.Level);
        (float upright, float level) = StringVoice.Shares;
        _left = _left.WithElement(2 * place, voice.Left * upright).WithElement((2 * place) + 1, voice.Left * level);
        _right = _right.WithElement(2 * place, voice.Right * upright).WithElement((2 * place) + 1, voice.Right * level);
    }

    private void TakeLoop(int lane, LoopDesign loop)
    {
        _delay[lane] = loop.Delay;
        _loss = _loss.WithElement(lane, (float)loop.LossGain);
        double passSeconds = (loop.Delay + 8.0) / _sampleRate;
        _damped = _damped.WithElement(lane, (float)(loop.LossGain * Math.Pow(10.0, -3.0 * passSeconds / StringVoice.DampedDecaySeconds)));
        _pole = _pole.WithElement(lane, (float)loop.LossPole);
        _stiffness = _stiffness.WithElement(lane, (float)loop.Stiffness);
        _tuning = _tuning.WithElement(lane, (float)loop.Tuning);
    }

    private void Clear(int place)
    {
        Vector128<float> others = place == 0
            ? Vector128.Create(0, 0, -1, -1).AsSingle()
            : Vector128.Create(-1, -1, 0, 0).AsSingle();
        for (int i = 0; i < _states.Length; i++)
        {
            _states[i] &= others;
        }

        for (int i = 0; i < _line.Length; i += Lanes)
        {
            _line[i + (2 * place)] = 0f;
            _line[i + (2 * place) + 1] = 0f;
        }
    }

    // How much the loss of each lane changes from frame to frame while a hand comes down.
    private Vector128<float> DampingStep(long frame)
    {
        Vector128<float> step = Vector128<float>.Zero;
        float handFrames = (float)(StringVoice.HandSeconds * _sampleRate);
        for (int place = 0; place < Places; place++)
        {
            if (_playing[place] is not { } voice || frame < voice.Damp)
            {
                continue;
            }

            for (int lane = 2 * place; lane < (2 * place) + 2; lane++)
            {
                float most = _loss[lane] - _damped[lane];
                step = step.WithElement(lane, Math.Min(most / BlockFrames, (_loss[lane] / handFrames)));
            }
        }

        return step;
    }

    // The loops themselves, compiled at full speed from the first call on. States are kept in locals so that they stay in registers.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Run(Vector128<float> step, Span<Vector128<float>> left, Span<Vector128<float>> right)
    {
        ref float line = ref MemoryMarshal.GetArrayDataReference(_line);
        (int d0, int d1, int d2, int d3, int mask, int at) = (_delay[0], _delay[1], _delay[2], _delay[3], _mask, _at);
        (Vector128<float> loss, Vector128<float> pole, Vector128<float> a, Vector128<float> t) = (_loss, _pole, _stiffness, _tuning);
        (Vector128<float> toLeft, Vector128<float> toRight) = (_left, _right);
        Vector128<float>[] s = _states;
        Vector128<float>[] input = _input;
        (Vector128<float> p, Vector128<float> q) = (s[0], s[1]);
        (Vector128<float> s0, Vector128<float> s1, Vector128<float> s2) = (s[2], s[3], s[4]);
        (Vector128<float> s3, Vector128<float> s4, Vector128<float> s5) = (s[5], s[6], s[7]);
        for (int i = 0; i < BlockFrames; i++, at++)
        {
            Vector128<float> x = Vector128.Create(
                Unsafe.Add(ref line, ((at - d0) & mask) * Lanes),
                Unsafe.Add(ref line, (((at - d1) & mask) * Lanes) + 1),
                Unsafe.Add(ref line, (((at - d2) & mask) * Lanes) + 2),
                Unsafe.Add(ref line, (((at - d3) & mask) * Lanes) + 3));
            p = Vector128.FusedMultiplyAdd(pole, p, loss * x);
            Vector128<float> y = Allpass(Allpass(Allpass(p, a, ref s0), a, ref s1), a, ref s2);
            y = Allpass(Allpass(Allpass(y, a, ref s3), a, ref s4), a, ref s5);
            y = Allpass(y, t, ref q) + input[i];
            y.StoreUnsafe(ref Unsafe.Add(ref line, (at & mask) * Lanes));
            left[i] = Vector128.FusedMultiplyAdd(y, toLeft, left[i]);
            right[i] = Vector128.FusedMultiplyAdd(y, toRight, right[i]);
            loss -= step;
        }

        (_at, _loss) = (at, loss);
        (s[0], s[1], s[2], s[3], s[4], s[5], s[6], s[7]) = (p, q, s0, s1, s2, s3, s4, s5);
    }

    // (a + z^-1) / (1 + a z^-1), transposed. Fused, which is twice as fast and, by definition, rounds the same on every machine.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector128<float> Allpass(Vector128<float> x, Vector128<float> a, ref Vector128<float> state)
    {
        Vector128<float> y = Vector128.FusedMultiplyAdd(a, x, state);
        state = Vector128.FusedMultiplyAdd(-a, y, x);
        return y;
    }
}
