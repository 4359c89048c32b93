using Clampwise.Theory;

namespace Clampwise.Sound.Strings;

/// <summary>
/// The numbers of one delay loop: a whole delay, a one-pole loss, equal first-order allpasses for stiffness and one that tunes
/// (extended Karplus-Strong after Jaffe and Smith, Computer Music Journal 7(2), 1983; loop filters after Karjalainen, Valimaki and
/// Tolonen, Computer Music Journal 22(3), 1998).
/// </summary>
/// <param name="Delay">Whole samples of delay, 1 or more.</param>
/// <param name="LossGain">b of the loss filter b / (1 - p z^-1).</param>
/// <param name="LossPole">p of the loss filter.</param>
/// <param name="Stiffness">a of each stiffness allpass (a + z^-1) / (1 + a z^-1).</param>
/// <param name="Tuning">a of the tuning allpass.</param>
internal readonly record struct LoopDesign(int Delay, double LossGain, double LossPole, double Stiffness, double Tuning)
{
    /// <summary>How many stiffness allpasses are in a loop.</summary>
    public const int StiffnessStages = 6;

    internal const double HighHertz = 3000.0;
    private const double ShortestStage = 0.05;
    private const double LongestStage = 16.0;

    /// <summary>Designs the loop of one polarisation.</summary>
    /// <param name="string">How the string moves.</param>
    /// <param name="rate">The sample rate.</param>
    /// <param name="detune">How far this polarisation lies from the string's pitch.</param>
    /// <param name="decayFactor">How many times the string's decay times this polarisation rings.</param>
    public static LoopDesign Of(StringBehaviour @string, SampleRate rate, Cents detune, double decayFactor)
    {
        double radians = 2.0 * Math.PI / rate.Hertz;
        double firstHertz = @string.Partial(1) * detune.Ratio;
        double period = rate.Hertz / firstHertz;
        (double gain, double pole) = Loss(@string, rate, period, firstHertz, decayFactor);
        double stiffness = StiffnessFor(@string, rate, period, pole);
        double w = firstHertz * radians;
        double rest = period - LossDelay(pole, w) - (StiffnessStages * AllpassDelay(stiffness, w));
        int whole = Math.Max(1, (int)Math.Floor(rest - 0.5));
        double fraction = Math.Clamp(rest - whole, 0.05, 2.0);
        double tuning = Math.Sin((1.0 - fraction) * w / 2.0) / Math.Sin((1.0 + fraction) * w / 2.0);
        return new LoopDesign(whole, gain, pole, stiffness, tuning);
    }

    /// <summary>Phase delay in samples of (a + z^-1) / (1 + a z^-1) at an angular frequency.</summary>
    internal static double AllpassDelay(double a, double w) => 1.0 - (2.0 * Math.Atan2(a * Math.Sin(w), 1.0 + (a * Math.Cos(w))) / w);

    /// <summary>Phase delay in samples of 1 / (1 - p z^-1) at an angular frequency.</summary>
    internal static double LossDelay(double p, double w) => Math.Atan2(p * Math.Sin(w), 1.0 - (p * Math.Cos(w))) / w;

    // |b / (1 - p z^-1)| set to the wanted gain a pass at the first partial and at the high one; solved for p, then b.
    private static (double Gain, double Pole) Loss(StringBehaviour @string, SampleRate rate, double period, double firstHertz, double decayFactor)
    {
        double PassGain(double seconds) => Math.Pow(10.0, -3.0 * period / (rate.Hertz * seconds * decayFactor));
        double radians = 2.0 * Math.PI / rate.Hertz;
        double low = Math.Cos(firstHertz * radians);
        double high = Math.Cos(Math.Min(Math.Max(HighHertz, 2.0 * firstHertz), 0.45 * rate.Hertz) * radians);
        double lowGain = PassGain(@string.LowDecaySeconds);
        double ratio = Math.Pow(Math.Min(1.0, PassGain(@string.HighDecaySeconds) / lowGain), 2.0);
        double half = low - (ratio * high);
        double difference = 1.0 - ratio;
        double pole = difference < 1e-12 ? 0.0 : (half - Math.Sqrt(Math.Max(0.0, (half * half) - (difference * difference)))) / difference;
        double gain = lowGain * Math.Sqrt(1.0 - (2.0 * pole * low) + (pole * pole));
        return (Math.Min(gain, 1.0 - pole), pole);
    }

    // The allpasses must shorten the loop for a partial near 2 kHz just as stiffness does; their delay at zero frequency is searched for.
    private static double StiffnessFor(StringBehaviour @string, SampleRate rate, double period, double pole)
    {
        double radians = 2.0 * Math.PI / rate.Hertz;
        int number = Math.Max(4, (int)(2000.0 / @string.Hertz));
        (double first, double high) = (@string.Partial(1) * radians, Math.Min(@string.Partial(number) * radians, 2.8));
        double wanted = period * (1.0 - (@string.Partial(1) * number / @string.Partial(number)));
        double Shortening(double a) =>
            LossDelay(pole, first) - LossDelay(pole, high) + (StiffnessStages * (AllpassDelay(a, first) - AllpassDelay(a, high)));

        double longest = Math.Clamp((period - 2.5) / StiffnessStages * 0.8, ShortestStage, LongestStage);
        (double below, double above) = (Math.Min(1.0, longest), longest);
        for (int i = 0; i < 40 && above > below; i++)
        {
            double middle = (below + above) / 2.0;
            (below, above) = Shortening(Coefficient(middle)) < wanted ? (middle, above) : (below, middle);
        }

        return Coefficient(below);
    }

    // First-order allpass with so much delay at zero frequency.
    private static double Coefficient(double delay) => (1.0 - delay) / (1.0 + delay);
}
