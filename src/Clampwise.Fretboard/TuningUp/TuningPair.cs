using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>
/// Two strings that form a unison or whole octaves in a setup. Equal temperament keeps these pure, so that they can be tuned until they
/// stop beating; fifths and thirds can't.
/// </summary>
/// <param name="Lower">The string of the lower pitch; of a unison, the one of the higher number.</param>
/// <param name="Upper">The other one.</param>
/// <param name="Octaves">0 for a unison, 1 or more for octaves.</param>
/// <param name="CommonHertz">Where both have a partial: the lowest frequency at which they beat.</param>
/// <param name="CrossesClamp">True if a clamp holds just one of the two: the pair that shows whether the clamp pulls.</param>
public sealed record TuningPair(StringNumber Lower, StringNumber Upper, int Octaves, double CommonHertz, bool CrossesClamp)
{
    /// <summary>Beats a second when the upper string is off by so many cents: the difference of the two partials at the common frequency.</summary>
    public double BeatsAt(Cents off) => Math.Abs(CommonHertz * (off.Ratio - 1.0));

    /// <summary>What to listen for, in one sentence.</summary>
    public string Advice => Octaves == 0
        ? $"strings {Lower} and {Upper} sound the same pitch: turn until the beating slows and stops (5 cents off beat {Every(BeatsAt(new Cents(5.0)))})"
        : $"strings {Lower} and {Upper} are {(Octaves == 1 ? "an octave" : $"{Octaves} octaves")} apart: listen near {CommonHertz:0} Hz and turn until the slow swelling stops (5 cents off beat {Every(BeatsAt(new Cents(5.0)))})";

    private static string Every(double beats) => beats >= 1.0 ? $"{beats:0.0} times a second" : $"once in {1.0 / beats:0.0} seconds";
}
