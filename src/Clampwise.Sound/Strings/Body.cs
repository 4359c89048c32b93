using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

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

    /// <summary>Turns a block of what the strings do, left and right, into what the body radiates.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Process(Span<float> left, Span<float> right)
    {
        for (int i = 0; i < left.Length; i++)
        {
            float force = left[i] + right[i] + KeepAwake;
            (Vector128<float> sumLeft, Vector128<float> sumRight) = Ring(force - _in2);
            (_in2, _in1) = (_in1, force);
            left[i] = Block(((float)BodyModes.Direct * 2f * left[i]) + Vector128.Sum(sumLeft), ref _leftIn, ref _leftOut);
            right[i] = Block(((float)BodyModes.Direct * 2f * right[i]) + Vector128.Sum(sumRight), ref _rightIn, ref _rightOut);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private (Vector128<float> Left, Vector128<float> Right) Ring(float difference)
    {
        var input = Vector128.Create(difference);
        (Vector128<float> sumLeft, Vector128<float> sumRight) = (Vector128<float>.Zero, Vector128<float>.Zero);
        for (int g = 0; g < _gain.Length; g++)
        {
            Vector128<float> y = (_gain[g] * input) + (_one[g] * _last[g]) + (_two[g] * _beforeLast[g]);
            (_beforeLast[g], _last[g]) = (_last[g], y);
            sumLeft += y * _left[g];
            sumRight += y * _right[g];
        }

        return (sumLeft, sumRight);
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
