namespace Clampwise.Theory;

/// <summary>
/// Frames a second of rendered sound: 22,050 to 192,000. Below, the third octave of partials of the top string is lost; above, nothing
/// is heard any more and the delay lines only grow. The default is 44,100 (the rate of IEC 60908).
/// </summary>
public readonly record struct SampleRate
{
    /// <summary>The lowest rate in hertz.</summary>
    public const int LowestHertz = 22_050;

    /// <summary>The highest rate in hertz.</summary>
    public const int HighestHertz = 192_000;

    private const int StandardHertz = 44_100;
    private readonly int _aboveStandard;

    private SampleRate(int hertz) => _aboveStandard = hertz - StandardHertz;

    /// <summary>44,100 hertz.</summary>
    public static SampleRate Standard => default;

    /// <summary>Frames a second.</summary>
    public int Hertz => StandardHertz + _aboveStandard;

    /// <summary>A rate, or a fault outside 22,050 to 192,000 hertz.</summary>
    public static Result<SampleRate> Of(int hertz) => hertz is >= LowestHertz and <= HighestHertz
        ? new SampleRate(hertz)
        : TheoryWords.SampleRateOutOfRange(hertz);

    /// <summary>The frame nearest to a time from the start.</summary>
    public long FrameAt(TimeSpan time) => (long)Math.Round(time.TotalSeconds * Hertz);

    /// <inheritdoc/>
    public override string ToString() => $"{Hertz} Hz";
}
