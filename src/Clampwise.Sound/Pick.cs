using Clampwise.Theory;

namespace Clampwise.Sound;

/// <summary>Where and with what the strings are picked.</summary>
public sealed record Pick
{
    private const double NearestBridge = 0.03;
    private const double Middle = 0.5;

    private Pick(double position, double hardness) => (Position, Hardness) = (position, hardness);

    /// <summary>A medium pick at 0.16 of the string's length.</summary>
    public static Pick Standard { get; } = new(0.16, 0.5);

    /// <summary>Distance from the bridge as a share of the sounding length: 0.03 (at the bridge, thin and bright) to 0.5 (the middle, round).</summary>
    public double Position { get; }

    /// <summary>0 (the flesh of the thumb) to 1 (a stiff pick).</summary>
    public double Hardness { get; }

    /// <summary>A pick, or a fault for a position outside 0.03 to 0.5 or a hardness outside 0 to 1.</summary>
    public static Result<Pick> Of(double position, double hardness)
    {
        if (position is not (>= NearestBridge and <= Middle))
        {
            return SoundWords.PickPositionOutOfRange(position);
        }

        return hardness is >= 0.0 and <= 1.0 ? new Pick(position, hardness) : SoundWords.PickHardnessOutOfRange(hardness);
    }
}
