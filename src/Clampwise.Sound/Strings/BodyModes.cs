using System.Numerics;

namespace Clampwise.Sound.Strings;

/// <summary>One way in which the body rings.</summary>
/// <param name="Hertz">Its frequency.</param>
/// <param name="Quality">Its frequency by its width at half power.</param>
/// <param name="Left">Its gain at resonance to the left.</param>
/// <param name="Right">Its gain at resonance to the right.</param>
internal readonly record struct BodyMode(double Hertz, double Quality, double Left, double Right)
{
    /// <summary>The response of its filter at a frequency, without its gains: (jx/Q) / (1 - x^2 + jx/Q).</summary>
    public Complex Response(double hertz)
    {
        double x = hertz / Hertz;
        var damping = new Complex(0.0, x / Quality);
        return damping / (1.0 - (x * x) + damping);
    }
}

/// <summary>
/// The modes of a steel-string body: air near 103 Hz, top near 196 Hz, a few single ones, and dense ones above 650 Hz that also spread
/// the sound from left to right. Frequencies of the first two are typical of the literature (Fletcher and Rossing, on guitars); the
/// others are spaced by a fixed rule. Gains are low on purpose, so that neighbouring notes stay alike in loudness.
/// </summary>
internal static class BodyModes
{
    /// <summary>How much of the string reaches the ear past the modes.</summary>
    public const double Direct = 0.4;

    private const int DenseCount = 18;
    private const double DenseFrom = 650.0;
    private const double DenseTo = 6200.0;

    /// <summary>The modes, lowest first.</summary>
    public static BodyMode[] All { get; } =
    [
        new(103, 9, 0.55, 0.55),
        new(196, 12, 0.60, 0.55),
        new(262, 16, 0.22, 0.32),
        new(318, 18, 0.34, 0.24),
        new(412, 20, 0.30, 0.36),
        new(532, 22, 0.34, 0.26),
        .. Enumerable.Range(0, DenseCount).Select(Dense),
    ];

    /// <summary>The power of left and right together at a frequency, for a string in the middle.</summary>
    public static double Power(double hertz)
    {
        (Complex left, Complex right) = (Direct, Direct);
        foreach (BodyMode mode in All)
        {
            Complex response = mode.Response(hertz);
            (left, right) = (left + (mode.Left * response), right + (mode.Right * response));
        }

        return ((left * Complex.Conjugate(left)).Real + (right * Complex.Conjugate(right)).Real) / 2.0;
    }

    private static BodyMode Dense(int index)
    {
        double place = (index + (0.35 * Math.Sin(index * 2.4))) / (DenseCount - 1);
        double hertz = DenseFrom * Math.Pow(DenseTo / DenseFrom, Math.Max(0.0, place));
        double gain = 0.24 * Math.Pow(DenseFrom / hertz, 0.25);
        double lean = 0.45 * Math.Sin((index * 1.9) + 0.6);
        return new BodyMode(hertz, 14.0 + (3.0 * Math.Sin(index * 1.3)), gain * (1.0 + lean), gain * (1.0 - lean));
    }
}
