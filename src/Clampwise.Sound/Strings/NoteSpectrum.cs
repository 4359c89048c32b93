using Clampwise.Theory;

namespace Clampwise.Sound.Strings;

/// <summary>What can be said of a note's partials before it sounds.</summary>
/// <param name="Size">How loud a pulse of size 1 comes out of the body, for evening out the notes.</param>
/// <param name="ReadSharp">How far above the first partial a tuner reads the note, because the upper partials of a stiff string are sharp.</param>
internal readonly record struct NoteSpectrum(double Size, Cents ReadSharp)
{
    // All the way would take the body's colour away.
    private const double Evenness = 0.85;
    private const int MostPartials = 40;
    private const double HighestHertz = 5000.0;

    // Tuners read a note some time after the pick, when the highest partials are gone.
    private const double ReadAfterSeconds = 0.3;

    /// <summary>
    /// A pulse in a loop of N samples gives partials of 2/N times its spectrum, which the body then weighs. Tuners that compare a wave
    /// with itself a period later weigh each partial by the squares of its size and of its number.
    /// </summary>
    public static NoteSpectrum Of(StringBehaviour @string, PickPulse pulse, SampleRate rate)
    {
        (double power, double weights, double weighted) = (0.0, 0.0, 0.0);
        double Size(double hertz) => 2.0 * @string.Hertz / rate.Hertz * pulse.Magnitude(2.0 * Math.PI * hertz / rate.Hertz);
        for (int n = 1; n <= MostPartials && @string.Partial(n) < Math.Min(HighestHertz, 0.45 * rate.Hertz); n++)
        {
            double own = Math.Pow(Size(@string.Partial(n)), 2.0) * BodyModes.Power(@string.Partial(n));
            power += own;
            double heard = own * n * n * Math.Pow(10.0, -6.0 * ReadAfterSeconds / @string.DecaySeconds(@string.Partial(n)));
            weights += heard;
            weighted += heard * Cents.Between(n * @string.Partial(1), @string.Partial(n)).Value;
        }

        double even = Math.Pow(Math.Sqrt(power), Evenness) * Math.Pow(Size(@string.Hertz), 1.0 - Evenness);
        return new NoteSpectrum(Math.Max(even, 1e-9), new Cents(weights > 0.0 ? weighted / weights : 0.0));
    }
}
