using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Clampwise.Sound.Blocks;
using Clampwise.Theory;

namespace Clampwise.Sound.Strings;

/// <summary>
/// The body as a bank of second-order resonators, four at a time: what the strings do at the bridge comes out left and right. No
/// convolution: the first sample leaves as soon as the first one enters.
/// </summary>
internal sealed class Body
{
    private const int Lanes = 4;
    private const double BlockerHertz = 25.0;

    // A constant far below hearing keeps the filters' states out of the range where processors slow down (denormal numbers).
    private const float KeepAwake = 1e-18f;

    private readonly Vector128<float>[] _gain;
    private readonly Vector128<float>[] _one;
    private readonly Vector128<float>[] _two;
    private readonly Vector128<float>[] _left;
    private readonly Vector128<float>[] _right;
    private readonly Vector128<float>[] _last;
    private readonly Vector128<float>[] _beforeLast;
    private readonly float[] _difference = new float[BlockRendering.BlockFrames];
    private readonly Vector128<float>[] _sumLeft = new Vector128<float>[BlockRendering.BlockFrames];
    private readonly Vector128<float>[] _sumRight = new Vector128<float>[BlockRendering.BlockFrames];
    private readonly float _blocker;
    private float _in1;
    private float _in2;
    private float _leftIn;
    private float _leftOut;
    private float _rightIn;
    private float _rightOut;

    public Body(SampleRate rate)
    {
        BodyMode[] modes = BodyModes.All;
        int groups = modes.Length / Lanes;
        (_gain, _one, _two) = (new Vector128<float>[groups], new Vector128<float>[groups], new Vector128<float>[groups]);
        (_left, _right) = (new Vector128<float>[groups], new Vector128<float>[groups]);
        (_last, _beforeLast) = (new Vector128<float>[groups], new Vector128<float>[groups]);
        for (int i = 0; i < groups * Lanes; i++)
        {
            Place(modes[i], i / Lanes, i % Lanes, rate);
        }

        _blocker = (float)(1.0 - (2.0 * Math.PI * BlockerHertz / rate.Hertz));
    }

    /// <summary>Turns a block of what the strings do, left and right, into what the body radiates. At most <see cref="BlockRendering.BlockFrames"/>.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Process(Span<float> left, Span<float> right)
    {
        for (int i = 0; i < left.Length; i++)
        {
            float force = left[i] + right[i] + KeepAwake;
            _difference[i] = force - _in2;
            (_in2, _in1) = (_in1, force);
        }

        Array.Clear(_sumLeft);
        Array.Clear(_sumRight);
        for (int g = 0; g < _gain.Length; g++)
        {
            Ring(g, left.Length);
        }

        const float Straight = (float)BodyModes.Direct * 2f;
        for (int i = 0; i < left.Length; i++)
        {
            left[i] = Block((Straight * left[i]) + Vector128.Sum(_sumLeft[i]), ref _leftIn, ref _leftOut);
            right[i] = Block((Straight * right[i]) + Vector128.Sum(_sumRight[i]), ref _rightIn, ref _rightOut);
        }
    }

    // Four modes over a whole block, their states in registers.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Ring(int g, int frames)
    {
        (Vector128<float> gain, Vector128<float> one, Vector128<float> two) = (_gain[g], _one[g], _two[g]);
        (Vector128<float> toLeft, Vector128<float> toRight) = (_left[g], _right[g]);
        (Vector128<float> last, Vector128<float> before) = (_last[g], _beforeLast[g]);
        (float[] difference, Vector128<float>[] left, Vector128<float>[] right) = (_difference, _sumLeft, _sumRight);
        for (int i = 0; i < frames; i++)
        {
            Vector128<float> known = Vector128.FusedMultiplyAdd(two, before, gain * difference[i]);
            before = last;
            last = Vector128.FusedMultiplyAdd(one, last, known);
            left[i] = Vector128.FusedMultiplyAdd(last, toLeft, left[i]);
            right[i] = Vector128.FusedMultiplyAdd(last, toRight, right[i]);
        }

        (_last[g], _beforeLast[g]) = (last, before);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private float Block(float input, ref float lastIn, ref float lastOut)
    {
        lastOut = input - lastIn + (_blocker * lastOut);
        lastIn = input;
        return lastOut;
    }

    // Band-pass with a peak of 1 (Bristow-Johnson, Cookbook formulae for audio equalizer biquad filter coefficients).
    private void Place(BodyMode mode, int group, int lane, SampleRate rate)
    {
        double w = 2.0 * Math.PI * mode.Hertz / rate.Hertz;
        double alpha = Math.Sin(w) / (2.0 * mode.Quality);
        Set(_gain, group, lane, alpha / (1.0 + alpha));
        Set(_one, group, lane, 2.0 * Math.Cos(w) / (1.0 + alpha));
        Set(_two, group, lane, -(1.0 - alpha) / (1.0 + alpha));
        Set(_left, group, lane, mode.Left);
        Set(_right, group, lane, mode.Right);
    }

    private static void Set(Vector128<float>[] vectors, int group, int lane, double value) =>
        vectors[group] = vectors[group].WithElement(lane, (float)value);
}
