namespace Clampwise.Sound.SoundFonts;

/// <summary>
/// The numbers of a resonant low-pass (Bristow-Johnson, Cookbook formulae for audio equalizer biquad filter coefficients), divided by a0.
/// </summary>
internal readonly record struct LowPass(float B0, float B1, float B2, float A1, float A2)
{
    /// <summary>Lets everything through.</summary>
    public static LowPass Open { get; } = new(1f, 0f, 0f, 0f, 0f);

    /// <summary>A low-pass at a frequency below half the rate, with a quality of 0.707 for no resonance.</summary>
    public static LowPass Of(double hertz, double quality, double rateHertz)
    {
        (double sin, double cos) = Math.SinCos(2.0 * Math.PI * hertz / rateHertz);
        double alpha = sin / (2.0 * quality);
        double a0 = 1.0 + alpha;
        double b1 = (1.0 - cos) / a0;
        return new LowPass((float)(b1 / 2.0), (float)b1, (float)(b1 / 2.0), (float)(-2.0 * cos / a0), (float)((1.0 - alpha) / a0));
    }
}
