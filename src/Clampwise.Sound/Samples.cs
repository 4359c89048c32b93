namespace Clampwise.Sound;

/// <summary>Samples as whole numbers.</summary>
internal static class Samples
{
    private const float ShortScale = 32767f;
    private const float Scale24 = 8_388_607f;

    /// <summary>16-bit samples, rounded to the nearest; what lies outside -1 to 1 is held there.</summary>
    public static void ToShorts(ReadOnlySpan<float> samples, Span<short> shorts)
    {
        for (int i = 0; i < samples.Length; i++)
        {
            shorts[i] = (short)MathF.Round(Math.Clamp(samples[i], -1f, 1f) * ShortScale);
        }
    }

    /// <summary>A 24-bit sample in the low bits, rounded to the nearest; what lies outside -1 to 1 is held there.</summary>
    public static int To24(float sample) => (int)MathF.Round(Math.Clamp(sample, -1f, 1f) * Scale24);
}
