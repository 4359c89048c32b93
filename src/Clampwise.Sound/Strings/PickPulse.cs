using Clampwise.Theory;

namespace Clampwise.Sound.Strings;

/// <summary>
/// What the pick gives to the string: one smooth pulse, and its reflection from the other side of the picking point, which thins out the
/// partials that have a node there (Jaffe and Smith 1983, pick position as a comb). No noise: noise is what makes such models a toy.
/// </summary>
internal sealed class PickPulse
{
    private const double SoftSeconds = 0.0005;
    private const double HardSeconds = 0.00012;
    private const double SoftCorner = 1.5;
    private const double HardCorner = 7.0;
    private const double TailDecays = 9.0;
    private readonly double _width;
    private readonly double _pole;
    private readonly double _comb;

    private PickPulse(double width, double pole, double comb) => (_width, _pole, _comb) = (width, pole, comb);

    /// <summary>The pulse of a pick on a string.</summary>
    public static PickPulse Of(Pick pick, Strength strength, StringBehaviour @string, SampleRate rate)
    {
        // A harder stroke lets go of the string faster: shorter and brighter (estimate, near the 0.3 to 0.6 ms of common models).
        double bite = Math.Clamp((0.7 * pick.Hardness) + (0.6 * (strength.Value - 0.4)), 0.0, 1.0);
        double width = double.Lerp(SoftSeconds, HardSeconds, bite) * rate.Hertz;
        // A string that is pulled aside and let go has partials that fall with their number: a corner at a few times its pitch.
        double corner = Math.Clamp(double.Lerp(SoftCorner, HardCorner, bite) * @string.Hertz, 160.0, 2500.0);
        return new PickPulse(width, Math.Exp(-2.0 * Math.PI * corner / rate.Hertz), pick.Position * rate.Hertz / @string.Hertz);
    }

    /// <summary>The samples, from the moment the pick lets go; they add up to nothing.</summary>
    public float[] Samples()
    {
        int single = (int)Math.Ceiling(_width + (TailDecays / (1.0 - _pole)));
        var samples = new double[single + (int)Math.Ceiling(_comb) + 2];
        int shift = (int)Math.Floor(_comb);
        double fraction = _comb - shift;
        double smoothed = 0.0;
        for (int i = 0; i < single; i++)
        {
            smoothed = (_pole * smoothed) + ((1.0 - _pole) * Hann(i));
            samples[i] += smoothed;
            samples[i + shift] -= smoothed * (1.0 - fraction);
            samples[i + shift + 1] -= smoothed * fraction;
        }

        return Array.ConvertAll(samples, sample => (float)sample);
    }

    /// <summary>The pulse's strength at an angular frequency, in samples.</summary>
    public double Magnitude(double w)
    {
        double comb = Math.Abs(2.0 * Math.Sin(w * _comb / 2.0));
        double onePole = (1.0 - _pole) / Math.Sqrt(1.0 - (2.0 * _pole * Math.Cos(w)) + (_pole * _pole));
        double x = w * _width / (2.0 * Math.PI);
        double hann = Math.Abs(x - 1.0) < 1e-6 ? 0.5 : Math.Abs(Sinc(x) / (1.0 - (x * x)));
        return comb * onePole * hann * _width / 2.0;
    }

    private static double Sinc(double x) => Math.Abs(x) < 1e-9 ? 1.0 : Math.Sin(Math.PI * x) / (Math.PI * x);

    private double Hann(int i) => i < _width ? 0.5 - (0.5 * Math.Cos(2.0 * Math.PI * (i + 0.5) / _width)) : 0.0;
}
