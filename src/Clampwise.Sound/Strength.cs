using Clampwise.Theory;

namespace Clampwise.Sound;

/// <summary>How hard a string is picked: above 0 (hardly touched) to 1 (as hard as it goes). The default is 0.7, a firm stroke.</summary>
public readonly record struct Strength
{
    private const double Firm = 0.7;
    private const double Softest = 0.05;
    private const int HighestVelocity = 127;
    private readonly double _aboveFirm;

    private Strength(double value) => _aboveFirm = value - Firm;

    /// <summary>A firm stroke, 0.7.</summary>
    public static Strength Standard => default;

    /// <summary>0.05 to 1.</summary>
    public double Value => Firm + _aboveFirm;

    /// <summary>The same as a MIDI velocity, 1 to 127.</summary>
    public int Velocity => Math.Clamp((int)Math.Round(Value * HighestVelocity), 1, HighestVelocity);

    /// <summary>A strength, or a fault outside 0.05 to 1.</summary>
    public static Result<Strength> Of(double value) => value is >= Softest and <= 1.0 ? new Strength(value) : SoundWords.StrengthOutOfRange(value);

    /// <summary>So many times as hard, kept within 0.05 to 1.</summary>
    public Strength Times(double factor) => new(Math.Clamp(Value * factor, Softest, 1.0));

    /// <inheritdoc/>
    public override string ToString() => $"{Value:0.00}";
}
