namespace Clampwise.Practice;

/// <summary>
/// The memory model FSRS-6 as published: how stability and difficulty move with each answer, and how recall falls between answers.
/// Like the common implementation it rounds each intermediate value to 8 decimals, half up.
/// </summary>
public sealed class Fsrs
{
    /// <summary>The least stability in days.</summary>
    public const double LeastStability = 0.001;

    /// <summary>The greatest stability in days, and the longest interval.</summary>
    public const double MostStability = 36500;

    private const double LeastFirstStability = 0.1;
    private readonly FsrsWeights _w;
    private readonly bool _rounds;
    private readonly double _factor;
    private readonly double _intervalPerStability;
    private readonly double _easiestDifficulty;

    /// <summary>The model with given weights and settings.</summary>
    public Fsrs(FsrsWeights weights, FsrsSettings settings) : this(weights, settings, rounds: true)
    {
    }

    // Fitting takes numeric slopes, and rounded values have none.
    internal Fsrs(FsrsWeights weights, FsrsSettings settings, bool rounds)
    {
        _w = weights;
        _rounds = rounds;
        Settings = settings;
        _factor = Round(Math.Exp(Math.Log(0.9) / -weights[20]) - 1);
        _intervalPerStability = Round((Math.Pow(settings.DesiredRetention, -1 / weights[20]) - 1) / _factor);
        _easiestDifficulty = FirstDifficulty(Grade.Instant);
    }

    /// <summary>The published weights with the usual settings.</summary>
    public static Fsrs Default { get; } = new(FsrsWeights.Default, FsrsSettings.Usual);

    /// <summary>The settings.</summary>
    public FsrsSettings Settings { get; }

    /// <summary>The weights.</summary>
    public FsrsWeights Weights => _w;

    /// <summary>R(t, S) = (1 + F t / S)^-w20: the chance of recall, 0 to 1, so many days after the last answer.</summary>
    public double Recall(double stability, double days) => Round(Math.Pow(1 + (_factor * days / stability), -_w[20]));

    /// <summary>Whole days until the chance of recall has fallen to the desired retention, 1 or more.</summary>
    public int IntervalDays(double stability) =>
        (int)Math.Clamp(Math.Floor((stability * _intervalPerStability) + 0.5), 1, Settings.MaximumIntervalDays);

    /// <summary>The memory after the first answer.</summary>
    public Memory First(Grade grade) =>
        new(Math.Max(_w[(int)grade - 1], LeastFirstStability), Math.Clamp(FirstDifficulty(grade), 1, 10));

    /// <summary>The memory after a further answer.</summary>
    /// <param name="memory">The memory before it.</param>
    /// <param name="days">Practice days since the last answer, 0 or more.</param>
    /// <param name="grade">How it was recalled.</param>
    public Memory Next(Memory memory, int days, Grade grade)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(days);
        double stability = days == 0 && Settings.CountsSameDay
            ? AfterSameDay(memory.Stability, grade)
            : AfterDays(memory, days == 0 ? 1 : Recall(memory.Stability, days), grade);
        return new Memory(stability, NextDifficulty(memory.Difficulty, grade));
    }

    private double FirstDifficulty(Grade grade) => Round(_w[4] - Math.Exp(((int)grade - 1) * _w[5]) + 1);

    private double NextDifficulty(double difficulty, Grade grade)
    {
        double step = Round(-_w[6] * ((int)grade - 3) * (10 - difficulty) / 9);
        return Math.Clamp(Round((_w[7] * _easiestDifficulty) + ((1 - _w[7]) * (difficulty + step))), 1, 10);
    }

    private double AfterDays(Memory memory, double recall, Grade grade) =>
        grade == Grade.Missed ? AfterLapse(memory, recall) : AfterSuccess(memory, recall, grade);

    private double AfterSuccess(Memory memory, double recall, Grade grade)
    {
        double growth = Math.Exp(_w[8]) * (11 - memory.Difficulty) * Math.Pow(memory.Stability, -_w[9]) * (Math.Exp(_w[10] * (1 - recall)) - 1);
        double strained = grade == Grade.Strained ? _w[15] : 1;
        double instant = grade == Grade.Instant ? _w[16] : 1;
        return Limit(memory.Stability * (1 + (growth * strained * instant)));
    }

    private double AfterLapse(Memory memory, double recall)
    {
        double relearnt = Limit(
            _w[11] * Math.Pow(memory.Difficulty, -_w[12]) * (Math.Pow(memory.Stability + 1, _w[13]) - 1) * Math.Exp(_w[14] * (1 - recall)));
        double most = Settings.CountsSameDay ? memory.Stability / Math.Exp(_w[17] * _w[18]) : memory.Stability;
        return Math.Min(Math.Max(Round(most), LeastStability), relearnt);
    }

    private double AfterSameDay(double stability, Grade grade)
    {
        double change = Math.Pow(stability, -_w[19]) * Math.Exp(_w[17] * ((int)grade - 3 + _w[18]));
        return Limit(stability * (grade == Grade.Missed ? change : Math.Max(change, 1)));
    }

    private double Limit(double stability) => Round(Math.Clamp(stability, LeastStability, MostStability));

    private double Round(double value) => _rounds ? Math.Floor((value * 1e8) + 0.5) / 1e8 : value;
}
