using System.Numerics;
using Clampwise.Theory;
using MathNet.Numerics.IntegralTransforms;

namespace Clampwise.Sound.Tests;

/// <summary>Measures what was rendered, with the transform of a general-purpose library (MathNet.Numerics).</summary>
internal static class Spectrum
{
    private const int Size = 1 << 17;

    /// <summary>The spectrum of left and right together from a time on, through a squared Hann window.</summary>
    public static Complex[] Of(float[] stereo, SampleRate rate, double fromSeconds, double seconds)
    {
        var bins = new Complex[Size];
        int start = (int)(fromSeconds * rate.Hertz);
        int length = (int)(seconds * rate.Hertz);
        for (int i = 0; i < length && (2 * (start + i)) + 1 < stereo.Length; i++)
        {
            double window = 0.5 - (0.5 * Math.Cos(2.0 * Math.PI * (i + 0.5) / length));
            bins[i] = window * window * (stereo[2 * (start + i)] + stereo[(2 * (start + i)) + 1]);
        }

        Fourier.Forward(bins, FourierOptions.NoScaling);
        return bins;
    }

    /// <summary>The frequency of the highest peak within half a semitone of a guess, between bins by a parabola through the logarithms.</summary>
    public static double PeakNear(Complex[] bins, SampleRate rate, double guessHertz)
    {
        double binsPerHertz = (double)Size / rate.Hertz;
        int from = (int)(guessHertz * 0.972 * binsPerHertz);
        int to = (int)(guessHertz * 1.03 * binsPerHertz) + 1;
        int best = Enumerable.Range(from, to - from + 1).MaxBy(k => bins[k].Magnitude);
        (double a, double b, double c) = (Math.Log(bins[best - 1].Magnitude), Math.Log(bins[best].Magnitude), Math.Log(bins[best + 1].Magnitude));
        return (best + (0.5 * (a - c) / (a - (2.0 * b) + c))) / binsPerHertz;
    }

    /// <summary>The level in decibels of a partial near a frequency, relative to nothing in particular.</summary>
    public static double Level(Complex[] bins, SampleRate rate, double hertz)
    {
        int middle = (int)Math.Round(hertz * Size / rate.Hertz);
        int around = Math.Max(2, (int)(3.0 * Size / rate.Hertz));
        return 20.0 * Math.Log10(Enumerable.Range(middle - around, (2 * around) + 1).Max(k => bins[k].Magnitude));
    }
}
