using Clampwise.Theory;
using NAudio.Dsp;

namespace Clampwise.Sound.SoundFonts;

/// <summary>
/// How far a font's sample is from the pitch that the font states for it. Fonts are often several cents out, and differently from sample
/// to sample, which would spoil training the ear; so each sample is measured when it is loaded.
/// </summary>
internal static class SampleTuning
{
    private const int Size = 1 << 16;
    private const int MostPartials = 6;
    private const double SkipSeconds = 0.12;
    private const double SearchCents = 60.0;
    private const double FaintestPartial = 0.02;

    // Further out is meant, or is not a tone.
    private const double MostCents = 45.0;

    /// <summary>
    /// How far the sample sounds from a stated frequency: the mean over its first partials of their distances from whole multiples, each
    /// weighed by the squares of its size and number, as tuners weigh them. Zero if it is no clear tone near there.
    /// </summary>
    /// <param name="source">The sample.</param>
    /// <param name="statedHertz">What the font says that it sounds when played as recorded.</param>
    public static Cents Off(SampleSource source, double statedHertz)
    {
        float[] magnitudes = Magnitudes(source);
        double binsPerHertz = (double)Size / source.SampleRate;
        float loudest = magnitudes.Max();
        (double weights, double sum) = (0.0, 0.0);
        for (int n = 1; n <= MostPartials && n * statedHertz * binsPerHertz * 1.05 < magnitudes.Length - 2; n++)
        {
            (double bin, float size) = Peak(magnitudes, n * statedHertz * binsPerHertz);
            if (size > FaintestPartial * loudest && bin > 0.0)
            {
                double weight = (double)size * size * n * n;
                weights += weight;
                sum += weight * Cents.Between(n * statedHertz, bin / binsPerHertz).Value;
            }
        }

        double off = weights > 0.0 ? sum / weights : 0.0;
        return Math.Abs(off) <= MostCents ? new Cents(off) : Cents.None;
    }

    private static float[] Magnitudes(SampleSource source)
    {
        var reader = new InterpolatingSampleReader(source);
        var frames = new float[Size];
        reader.Read(frames.AsSpan(0, Math.Min(Size / 2, (int)(SkipSeconds * source.SampleRate))), 1.0);
        Array.Clear(frames);
        int length = reader.Read(frames, 1.0);
        for (int i = 0; i < length; i++)
        {
            double window = 0.5 - (0.5 * Math.Cos(2.0 * Math.PI * (i + 0.5) / length));
            frames[i] *= (float)(window * window);
        }

        var bins = new Complex[(Size / 2) + 1];
        new FftProcessor(Size).RealForward(frames, bins);
        return Array.ConvertAll(bins, bin => MathF.Sqrt((bin.X * bin.X) + (bin.Y * bin.Y)));
    }

    // The highest peak near a bin, between bins by a parabola through the logarithms; a peak at the edge of the search is none.
    private static (double Bin, float Size) Peak(float[] magnitudes, double near)
    {
        double ratio = Math.Pow(2.0, SearchCents / 1200.0);
        int from = Math.Max(1, (int)(near / ratio));
        int to = (int)Math.Ceiling(near * ratio);
        int best = from;
        for (int k = from; k <= to; k++)
        {
            best = magnitudes[k] > magnitudes[best] ? k : best;
        }

        if (best == from || best == to || magnitudes[best] <= 0f || magnitudes[best - 1] <= 0f || magnitudes[best + 1] <= 0f)
        {
            return (0.0, 0f);
        }

        (double a, double b, double c) = (Math.Log(magnitudes[best - 1]), Math.Log(magnitudes[best]), Math.Log(magnitudes[best + 1]));
        return (best + (0.5 * (a - c) / (a - (2.0 * b) + c)), magnitudes[best]);
    }
}
