using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Clampwise.Sound.Blocks;

/// <summary>Leaves everything below three quarters of full scale as it is and bends what is louder so that it never reaches full scale.</summary>
internal static class SoftCeiling
{
    private const float Knee = 0.75f;
    private const float Headroom = 0.2499f;

    /// <summary>Bends a block whose length is a multiple of four.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Bend(Span<float> samples)
    {
        var knee = Vector128.Create(Knee);
        foreach (ref Vector128<float> four in MemoryMarshal.Cast<float, Vector128<float>>(samples))
        {
            if (Vector128.GreaterThanAny(Vector128.Abs(four), knee))
            {
                four = Vector128.Create(Bend(four[0]), Bend(four[1]), Bend(four[2]), Bend(four[3]));
            }
        }
    }

    /// <summary>Bends one sample: knee + r x / (x + r) for x above the knee, which joins with the same slope.</summary>
    public static float Bend(float sample)
    {
        float size = Math.Abs(sample);
        if (size <= Knee)
        {
            return sample;
        }

        float over = size - Knee;
        return MathF.CopySign(Knee + (Headroom * over / (over + Headroom)), sample);
    }
}
