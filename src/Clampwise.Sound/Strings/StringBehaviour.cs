namespace Clampwise.Sound.Strings;

/// <summary>How one picked string will move: what the loops are designed from.</summary>
/// <param name="Hertz">The frequency that the ear and a tuner read.</param>
/// <param name="Inharmonicity">B of f_n = n f0 sqrt(1 + B n^2), as rendered.</param>
/// <param name="LowDecaySeconds">Time for the first partial to fall by 60 dB.</param>
/// <param name="HighDecaySeconds">Time for partials near 3 kHz to fall by 60 dB.</param>
internal readonly record struct StringBehaviour(double Hertz, double Inharmonicity, double LowDecaySeconds, double HighDecaySeconds)
{
    // Full stiffness makes tuners and ears read stopped wound strings several cents sharp; on the four low strings it is near the
    // threshold of hearing anyway (Jarvelainen and Karjalainen on the acoustic guitar). Half of it keeps the colour, and the cap keeps
    // partials 1 to 6 within a cent or so of their harmonic places at the top of the neck (our judgement).
    private const double StiffnessShare = 0.5;
    private const double StiffnessCap = 1.2e-4;

    // A shorter string gives its energy away sooner (estimate).
    private const double LowDecayExponent = 0.5;
    private const double HighDecayExponent = 0.25;

    // Readers of pitch weigh the first few partials: they read a stiff string about this many times B/2 above its first partial.
    private const double ReadingWeight = 2.5;

    /// <summary>
    /// The frequency of f0 in f_n = n f0 sqrt(1 + B n^2), so that partials 1 to 6 taken together sit at <see cref="Hertz"/>: half of what
    /// the upper ones rise is taken off the lowest one.
    /// </summary>
    public double StiffFundamental => Hertz / Math.Sqrt(1.0 + (ReadingWeight * Inharmonicity));

    /// <summary>The frequency of a partial, 1 for the lowest.</summary>
    public double Partial(int number) => number * StiffFundamental * Math.Sqrt(1.0 + (Inharmonicity * number * number));

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
        Contact.Clamp => (0.85, 0.7),
        _ => (0.65, 0.45),
    };
}
