using Clampwise.Fretboard;

namespace Clampwise.Sound.Strings;

/// <summary>
/// What one string of a light steel set is made of. Gauges are the light set of common practice; core diameters of the wound strings and
/// the decay times are estimates: no published source was found for a set of this kind, so that decay and brightness were set until a
/// strum's bands of frequency fell about as fast as those of recorded steel strings.
/// </summary>
/// <param name="GaugeInch">Diameter in inches.</param>
/// <param name="CoreInch">Diameter of the steel core in inches; equals the gauge for a plain string.</param>
/// <param name="TensionNewton">Tension at the reference pitch, in newton.</param>
/// <param name="ReferenceHertz">The pitch that the string is made for, in hertz.</param>
/// <param name="LowDecaySeconds">Time for the open string's first partial to fall by 60 dB.</param>
/// <param name="HighDecaySeconds">The same for partials near 3 kHz.</param>
internal sealed record StringMake(
    double GaugeInch, double CoreInch, double TensionNewton, double ReferenceHertz, double LowDecaySeconds, double HighDecaySeconds)
{
    /// <summary>Nut to bridge in metres; 0.628 to 0.650 by common practice.</summary>
    public const double ScaleLengthMetres = 0.648;

    private const double MetresPerInch = 0.0254;
    private const double YoungPascal = 2.0e11;

    // String 1 first. Strings 7 and 8 carry the set on downward as common practice does (B1, F#1).
    private static readonly StringMake[] s_set =
    [
        new(0.012, 0.012, 105, 329.63, 5.5, 2.2),
        new(0.016, 0.016, 104, 246.94, 7.0, 2.2),
        new(0.024, 0.012, 144, 196.00, 8.0, 2.0),
        new(0.032, 0.014, 143, 146.83, 9.0, 1.9),
        new(0.042, 0.016, 138, 110.00, 10.0, 1.8),
        new(0.053, 0.018, 123, 82.41, 11.0, 1.7),
        new(0.064, 0.020, 105, 61.74, 11.5, 1.6),
        new(0.080, 0.022, 98, 46.25, 12.0, 1.5),
    ];

    /// <summary>The string of a number.</summary>
    public static StringMake Of(StringNumber number) => s_set[number.Number - 1];

    /// <summary>
    /// Inharmonicity of a sounding length at a frequency: f_n = n f0 sqrt(1 + B n^2) with B = pi^3 E d^4 / (64 T L^2), d the core's
    /// diameter and T = 4 mu L^2 f^2 (Fletcher and Rossing, The Physics of Musical Instruments, on stiff strings).
    /// </summary>
    /// <param name="hertz">What the string sounds.</param>
    /// <param name="stoppedAt">Where its sounding length begins.</param>
    public double Inharmonicity(double hertz, Fret stoppedAt)
    {
        double length = ScaleLengthMetres * Math.Pow(2.0, -stoppedAt.Number / 12.0);
        double twiceOpen = 2.0 * ScaleLengthMetres * ReferenceHertz;
        double massPerMetre = TensionNewton / (twiceOpen * twiceOpen);
        double tension = massPerMetre * Math.Pow(2.0 * length * hertz, 2.0);
        return Math.Pow(Math.PI, 3.0) * YoungPascal * Math.Pow(CoreInch * MetresPerInch, 4.0) / (64.0 * tension * length * length);
    }
}
