using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Clampwise.Theory;

namespace Clampwise.Sound.Blocks;

/// <summary>
/// A small furnished room: four delay lines that feed each other through a Hadamard matrix (feedback delay network after Jot, 1991),
/// each with a loss that grows with frequency. Quiet: it only takes the edge off the dryness.
/// </summary>
internal sealed class Room
{
    private const int Lines = 4;
    private const double DecaySeconds = 0.42;
    private const double DampingHertz = 3800.0;
    private const float Wet = 0.11f;
    private const float KeepAwake = 1e-18f;
    private static readonly double[] s_seconds = [0.0233, 0.0297, 0.0341, 0.0419];

    private readonly float[] _line;
    private readonly int _mask;
    private readonly int[] _delay;
    private readonly Vector128<float> _gain;
    private readonly Vector128<float> _pole;
    private Vector128<float> _state;
    private int _at;

    public Room(SampleRate rate)
    {
        _delay = [.. s_seconds.Select(seconds => (int)(seconds * rate.Hertz) | 1)];
        int capacity = (int)System.Numerics.BitOperations.RoundUpToPowerOf2((uint)_delay.Max() + 1);
        (_line, _mask) = (new float[capacity * Lines], capacity - 1);
        double pole = Math.Exp(-2.0 * Math.PI * DampingHertz / rate.Hertz);
        _pole = Vector128.Create((float)pole);
        float Gain(int i) => (float)((1.0 - pole) * Math.Pow(10.0, -3.0 * _delay[i] / (rate.Hertz * DecaySeconds)));
        _gain = Vector128.Create(Gain(0), Gain(1), Gain(2), Gain(3)) * 0.5f;
    }

    /// <summary>Adds the room to a block.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Process(Span<float> left, Span<float> right)
    {
        var input = Vector128.Create(1f, -1f, 1f, 1f);
        for (int i = 0; i < left.Length; i++)
        {
            Vector128<float> read = Vector128.Create(Tap(0), Tap(1), Tap(2), Tap(3));
            _state = (_pole * _state) + (_gain * read);
            float fed = (0.5f * (left[i] + right[i])) + KeepAwake;
            Vector128<float> written = Hadamard(_state) + (input * fed);
            written.CopyTo(_line, (_at & _mask) * Lines);
            _at++;
            left[i] += Wet * (read[0] + read[2]);
            right[i] += Wet * (read[1] + read[3]);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private float Tap(int line) => _line[(((_at - _delay[line]) & _mask) * Lines) + line];

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector128<float> Hadamard(Vector128<float> v)
    {
        Vector128<float> near = Vector128.Shuffle(v, Vector128.Create(1, 0, 3, 2));
        Vector128<float> once = near + (v * Vector128.Create(1f, -1f, 1f, -1f));
        Vector128<float> far = Vector128.Shuffle(once, Vector128.Create(2, 3, 0, 1));
        return far + (once * Vector128.Create(1f, 1f, -1f, -1f));
    }
}
