namespace Clampwise.Theory;

/// <summary>
/// The frequency of A4 that everything is tuned to: 415 Hz (a common historical pitch, a semitone below 440) to 466 Hz (a semitone
/// above); common practice, no source. The default is 440 Hz (ISO 16).
/// </summary>
public readonly record struct ConcertPitch
{
    /// <summary>The lowest A4 in hertz.</summary>
    public const double LowestHertz = 415.0;

    /// <summary>The highest A4 in hertz.</summary>
    public const double HighestHertz = 466.0;

    private readonly double _aboveStandard;

    private ConcertPitch(double hertz) => _aboveStandard = hertz - Pitch.StandardA4Hertz;

    /// <summary>A4 = 440 Hz.</summary>
    public static ConcertPitch Standard => default;

    /// <summary>A4 in hertz.</summary>
    public double A4Hertz => Pitch.StandardA4Hertz + _aboveStandard;

    /// <summary>A concert pitch, or a fault outside 415 to 466 Hz.</summary>
    public static Result<ConcertPitch> Of(double a4Hertz) => a4Hertz is >= LowestHertz and <= HighestHertz
        ? new ConcertPitch(a4Hertz)
        : TheoryWords.ConcertPitchOutOfRange(a4Hertz);

    /// <summary>The frequency of a pitch in hertz, moved by some cents.</summary>
    public double Hertz(Pitch pitch, Cents detune = default) => pitch.Hertz(A4Hertz) * detune.Ratio;

    /// <inheritdoc/>
    public override string ToString() => $"A4 = {A4Hertz:0.##} Hz";
}
