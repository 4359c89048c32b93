using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Clampwise.Sound.Blocks;
using Clampwise.Theory;

namespace Clampwise.Sound.Strings;

/// <summary>Four delay loops computed side by side in the lanes of one vector: two places for strings, two polarisations each.</summary>
internal sealed class LoopLanes
{
    /// <summary>How many strings find a place.</summary>
    public const int Places = 2;

    private const int Lanes = 4;
    private const int BlockFrames = BlockRendering.BlockFrames;
    private readonly Vector128<float>[] _states = new Vector128<float>[LoopDesign.StiffnessStages + 2];
    private readonly int[] _delay = new int[Lanes];
    private readonly float[] _line;
    private readonly int _mask;
    private readonly int _sampleRate;
    private int _at;
    private Vector128<float> _loss;
    private Vector128<float> _damped;
    private Vector128<float> _pole;
    private Vector128<float> _stiffness;
    private Vector128<float> _tuning;
    private Vector128<float> _left;
    private Vector128<float> _right;

    /// <summary>Loops with room for delays up to a length in samples.</summary>
    public LoopLanes(int longestDelay, SampleRate rate)
    {
        int capacity = (int)System.Numerics.BitOperations.RoundUpToPowerOf2((uint)longestDelay + 1);
        (_line, _mask, _sampleRate) = (new float[capacity * Lanes], capacity - 1, rate.Hertz);
    }

    /// <summary>What goes into the loops in the next block, lane by lane.</summary>
    public Vector128<float>[] Input { get; } = new Vector128<float>[BlockFrames];

    /// <summary>Sets a place up for a voice and forgets what was there.</summary>
    public void Take(int place, StringVoice voice)
    {
        Clear(place);
        TakeLoop(2 * place, voice.Upright);
        TakeLoop((2 * place) + 1, voice.Level);
        (float upright, float level) = StringVoice.Shares;
        _left = _left.WithElement(2 * place, voice.Left * upright).WithElement((2 * place) + 1, voice.Left * level);
        _right = _right.WithElement(2 * place, voice.Right * upright).WithElement((2 * place) + 1, voice.Right * level);
    }

    /// <summary>Silences a place.</summary>
    public void Clear(int place)
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

    /// <summary>How much the loss of each lane changes from frame to frame in a block while a hand comes down on some places.</summary>
    public Vector128<float> DampingStep(bool isFirstDamped, bool isSecondDamped)
    {
        float handFrames = (float)(StringVoice.HandSeconds * _sampleRate);
        Vector128<float> step = Vector128.Min((_loss - _damped) / BlockFrames, _loss / handFrames);
        (float first, float second) = (isFirstDamped ? 1f : 0f, isSecondDamped ? 1f : 0f);
        return step * Vector128.Create(first, first, second, second);
    }

    /// <summary>Runs all loops through one block and adds what reaches the bridge. Compiled at full speed from the first call on.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Run(Vector128<float> step, Span<Vector128<float>> left, Span<Vector128<float>> right)
    {
        // States are kept in locals so that they stay in registers.
        ref float line = ref MemoryMarshal.GetArrayDataReference(_line);
        (int d0, int d1, int d2, int d3, int mask, int at) = (_delay[0], _delay[1], _delay[2], _delay[3], _mask, _at);
        (Vector128<float> loss, Vector128<float> pole, Vector128<float> a, Vector128<float> t) = (_loss, _pole, _stiffness, _tuning);
        (Vector128<float> toLeft, Vector128<float> toRight) = (_left, _right);
        Vector128<float>[] s = _states;
        Vector128<float>[] input = Input;
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

    // (a + z^-1) / (1 + a z^-1), transposed. Fused, which is twice as fast and, by definition, rounds the same on every machine.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector128<float> Allpass(Vector128<float> x, Vector128<float> a, ref Vector128<float> state)
    {
        Vector128<float> y = Vector128.FusedMultiplyAdd(a, x, state);
        state = Vector128.FusedMultiplyAdd(-a, y, x);
        return y;
    }
}
