namespace Clampwise.Theory;

/// <summary>Beats a minute, 20 to 300 (a common metronome's range and somewhat beyond). The default is 80.</summary>
public readonly record struct Tempo
{
    private const double Slowest = 20.0;
    private const double Fastest = 300.0;
    private const double Usual = 80.0;
    private readonly double _aboveUsual;

    private Tempo(double beatsPerMinute) => _aboveUsual = beatsPerMinute - Usual;

    /// <summary>Beats a minute.</summary>
    public double BeatsPerMinute => Usual + _aboveUsual;

    /// <summary>From one beat to the next.</summary>
    public TimeSpan Beat => TimeSpan.FromMinutes(1.0 / BeatsPerMinute);

    /// <summary>A tempo, or a fault outside 20 to 300 beats a minute.</summary>
    public static Result<Tempo> Of(double beatsPerMinute) => beatsPerMinute is >= Slowest and <= Fastest
        ? new Tempo(beatsPerMinute)
        : TheoryWords.TempoOutOfRange(beatsPerMinute);

    /// <inheritdoc/>
    public override string ToString() => $"{BeatsPerMinute:0.#} beats a minute";
}
