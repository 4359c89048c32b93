using Clampwise.Theory;

namespace Clampwise.Sound.Strings;

/// <summary>How one picked string will move: what the loops are designed from.</summary>
/// <param name="Hertz">The frequency that the ear and a tuner read.</param>
/// <param name="Inharmonicity">B of f_n = n f0 sqrt(1 + B n^2), as rendered.</param>
/// <param name="LowDecaySeconds">Time for the first partial to fall by 60 dB.</param>
/// <param name="HighDecaySeconds">Time for partials near 3 kHz to fall by 60 dB.</param>
internal readonly record struct StringBehaviour(double Hertz, double Inharmonicity, double LowDecaySeconds, double HighDecaySeconds)
{
    // Full stiffness makes tuners and ears read low wound strings several cents sharp; on the four low strings it is near the threshold
    // of hearing anyway (Jarvelainen and Karjalainen on the acoustic guitar). A part of it keeps the colour, and the cap keeps the upper
    // partials of stopped strings within a few cents of their harmonic places (our judgement).
    private const double StiffnessShare = 0.3;
    private const double StiffnessCap = 1.2e-4;

    // A shorter string gives its energy away sooner (estimate).
    private const double LowDecayExponent = 0.5;
    private const double HighDecayExponent = 0.25;

    /// <summary>How far the first partial is set below <see cref="Hertz"/>, so that the partials taken together are read there.</summary>
    public Cents Lowered { get; init; }

    /// <summary>The frequency f0 of f_n = n f0 sqrt(1 + B n^2).</summary>
    public double StiffFundamental => Hertz / (Lowered.Ratio * Math.Sqrt(1.0 + Inharmonicity));

    /// <summary>The frequency of a partial, 1 for the lowest.</summary>
    public double Partial(int number) => number * StiffFundamental * Math.Sqrt(1.0 + (Inharmonicity * number * number));

    /// <summary>About how long a partial takes to fall by 60 dB: losses grow with the square of the frequency between the two given ones.</summary>
    public double DecaySeconds(double hertz)
    {
        double grown = Math.Pow(hertz / LoopDesign.HighHertz, 2.0);
        return 1.0 / ((1.0 / LowDecaySeconds) + (grown * ((1.0 / HighDecaySeconds) - (1.0 / LowDecaySeconds))));
    }

    /// <summary>The behaviour of a note at a concert pitch.</summary>
    public static StringBehaviour Of(PlayedNote note, ConcertPitch concertPitch)
    {
        StringMake make = StringMake.Of(note.String);
        double hertz = concertPitch.Hertz(note.Pitch, note.Detune);
        double shortening = Math.Pow(2.0, -note.StoppedAt.Number / 12.0);
        (double low, double high) = ContactLoss(note.Contact);
        return new StringBehaviour(
            hertz,
            Math.Min(StiffnessCap, StiffnessShare * make.Inharmonicity(hertz, note.StoppedAt)),
            make.LowDecaySeconds * Math.Pow(shortening, LowDecayExponent) * low,
            make.HighDecaySeconds * Math.Pow(shortening, HighDecayExponent) * high);
    }

    // Estimates: the clamp's pad and, more so, the finger's flesh behind the fret take energy, most of all in the treble.
    private static (double Low, double High) ContactLoss(Contact contact) => contact switch
    {
        Contact.Nut => (1.0, 1.0),
        Contact.Clamp => (0.9, 0.85),
        _ => (0.75, 0.68),
    };
}
