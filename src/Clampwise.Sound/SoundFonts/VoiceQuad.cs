using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Clampwise.Sound.Blocks;

namespace Clampwise.Sound.SoundFonts;

/// <summary>Filters and mixes up to four voices side by side in the lanes of one vector.</summary>
internal sealed class VoiceQuad
{
    /// <summary>How many voices fit in.</summary>
    public const int Lanes = 4;

    private static readonly float[] s_silence = new float[BlockRendering.BlockFrames];
    private readonly SampleVoice[] _voices;
    private Vector128<float> _one;
    private Vector128<float> _two;
    private Vector128<float> _gain;

    public VoiceQuad(SampleVoice[] voices) => (_voices, Start) = (voices, voices.Min(voice => voice.Start));

    /// <summary>The frame at which the first of them starts.</summary>
    public long Start { get; }

    /// <summary>True when nothing more will come.</summary>
    public bool IsOver { get; private set; }

    /// <summary>Adds one block that starts at a frame to the sums of left and right.</summary>
    public void AddBlock(long frame, Span<Vector128<float>> left, Span<Vector128<float>> right)
    {
        if (IsOver)
        {
            return;
        }

        Vector128<float> sounding = Vector128<float>.Zero;
        bool isOver = true;
        for (int lane = 0; lane < _voices.Length; lane++)
        {
            sounding = sounding.WithElement(lane, _voices[lane].Compute(frame) ? 1f : 0f);
            isOver &= _voices[lane].IsOver;
        }

        IsOver = isOver;
        if (sounding != Vector128<float>.Zero)
        {
            Run(sounding, left, right);
        }
    }

    // Transposed direct form II; the gains move in straight lines. What a silent lane still holds is forgotten.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Run(Vector128<float> sounding, Span<Vector128<float>> left, Span<Vector128<float>> right)
    {
        ReadOnlySpan<float> x0 = SamplesOf(0, sounding);
        ReadOnlySpan<float> x1 = SamplesOf(1, sounding);
        ReadOnlySpan<float> x2 = SamplesOf(2, sounding);
        ReadOnlySpan<float> x3 = SamplesOf(3, sounding);
        Vector128<float> b0 = Gather(static voice => voice.Filter.B0);
        Vector128<float> b1 = Gather(static voice => voice.Filter.B1);
        Vector128<float> b2 = Gather(static voice => voice.Filter.B2);
        Vector128<float> a1 = Gather(static voice => -voice.Filter.A1);
        Vector128<float> a2 = Gather(static voice => -voice.Filter.A2);
        Vector128<float> toLeft = Gather(static voice => voice.LeftShare);
        Vector128<float> toRight = Gather(static voice => voice.RightShare);
        Vector128<float> target = Gather(static voice => voice.Gain) * sounding;
        (Vector128<float> one, Vector128<float> two, Vector128<float> gain) = (_one * sounding, _two * sounding, _gain * sounding);
        Vector128<float> slope = (target - gain) / BlockRendering.BlockFrames;
        for (int i = 0; i < BlockRendering.BlockFrames; i++)
        {
            Vector128<float> x = Vector128.Create(x0[i], x1[i], x2[i], x3[i]);
            Vector128<float> y = Vector128.FusedMultiplyAdd(b0, x, one);
            one = Vector128.FusedMultiplyAdd(a1, y, Vector128.FusedMultiplyAdd(b1, x, two));
            two = Vector128.FusedMultiplyAdd(a2, y, b2 * x);
            gain += slope;
            y *= gain;
            left[i] = Vector128.FusedMultiplyAdd(y, toLeft, left[i]);
            right[i] = Vector128.FusedMultiplyAdd(y, toRight, right[i]);
        }

        (_one, _two, _gain) = (one, two, target);
    }

    private ReadOnlySpan<float> SamplesOf(int lane, Vector128<float> sounding) => sounding[lane] == 0f ? s_silence : _voices[lane].Samples;

    private Vector128<float> Gather(Func<SampleVoice, float> value)
    {
        Vector128<float> gathered = Vector128<float>.Zero;
        for (int lane = 0; lane < _voices.Length; lane++)
        {
            gathered = gathered.WithElement(lane, value(_voices[lane]));
        }

        return gathered;
    }
}
