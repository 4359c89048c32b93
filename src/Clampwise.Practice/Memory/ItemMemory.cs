using System.Numerics;

namespace Clampwise.Practice;

/// <summary>All that is known of how one item is remembered, folded from its attempts.</summary>
/// <param name="Memory">The state of the memory model.</param>
/// <param name="FirstDay">The practice day of the first answer.</param>
/// <param name="LastDay">The practice day of the last answer.</param>
/// <param name="Answers">How many answers there were.</param>
/// <param name="RightAnswers">How many of them were right.</param>
/// <param name="Lapses">How often it was missed after it had been right.</param>
/// <param name="Recent">The last eight answers, the newest in the lowest bit: 1 for right.</param>
/// <param name="Slowness">Recent slowness of right answers in standard deviations of the usual log time; 0 is usual.</param>
/// <param name="LastGrade">The last grade.</param>
public sealed record ItemMemory(
    Memory Memory,
    PracticeDay FirstDay,
    PracticeDay LastDay,
    int Answers,
    int RightAnswers,
    int Lapses,
    byte Recent,
    double Slowness,
    Grade LastGrade)
{
    private const double SlownessShare = 0.35;
    private const int RecentKept = 8;
    private const double MissFade = 0.7;

    /// <summary>How often it was right without choices and without help.</summary>
    public int FreeAnswers { get; init; }

    /// <summary>On how many days after the first it was recalled so, with no miss before it on that day.</summary>
    public int FreeDays { get; init; }

    /// <summary>True if it was missed on the last day that it was answered on.</summary>
    public bool WasMissedLastDay { get; init; }

    /// <summary>The last of the days that <see cref="FreeDays"/> counts; the first day if there are none.</summary>
    public PracticeDay LastFreeDay { get; init; } = FirstDay;

    /// <summary>True if the last answer was right.</summary>
    public bool WasRight => (Recent & 1) == 1;

    /// <summary>Misses among the last eight answers.</summary>
    public int RecentMisses => Math.Min(Answers, RecentKept) - BitOperations.PopCount(Recent);

    /// <summary>The same, each miss fading by .7 with every later answer (our judgement).</summary>
    public double FadedMisses => Enumerable.Range(0, Math.Min(Answers, RecentKept)).Sum(back => ((Recent >> back) & 1) == 0 ? Math.Pow(MissFade, back) : 0);

    /// <summary>Practice days since the last answer; a day before it, from a clock put back, counts as the same day.</summary>
    public int DaysSince(PracticeDay today) => Math.Max(0, today - LastDay);

    /// <summary>The chance of recall on a day, 0 to 1.</summary>
    public double RecallOn(PracticeDay today, Fsrs model) => model.Recall(Memory.Stability, DaysSince(today));

    /// <summary>The day on which it is due.</summary>
    public PracticeDay DueOn(Fsrs model) => LastDay + model.IntervalDays(Memory.Stability);

    /// <summary>The memory after the first attempt.</summary>
    internal static ItemMemory First(Attempt attempt, double slowness, Fsrs model) => new(
        MemoryMove.First(attempt.Grade, attempt.IsPrimed, model),
        attempt.Day,
        attempt.Day,
        1,
        attempt.IsCorrect ? 1 : 0,
        0,
        (byte)(attempt.IsCorrect ? 1 : 0),
        attempt.IsCorrect ? SlownessShare * slowness : 0,
        attempt.Grade)
    {
        FreeAnswers = attempt.IsFree ? 1 : 0,
        WasMissedLastDay = !attempt.IsCorrect,
    };

    /// <summary>The memory after one more attempt.</summary>
    internal ItemMemory After(Attempt attempt, double slowness, Fsrs model)
    {
        bool wasMissedToday = WasMissedLastDay && attempt.Day <= LastDay;
        bool isFreeDay = attempt.IsFree && !wasMissedToday && attempt.Day > LastFreeDay && attempt.Day >= LastDay;
        return this with
        {
            Memory = MemoryMove.Next(Memory, DaysSince(attempt.Day), attempt.Grade, attempt.IsPrimed, model),
            LastDay = attempt.Day > LastDay ? attempt.Day : LastDay,
            Answers = Answers + 1,
            RightAnswers = RightAnswers + (attempt.IsCorrect ? 1 : 0),
            Lapses = Lapses + (!attempt.IsCorrect && RightAnswers > 0 && (Recent & 1) == 1 ? 1 : 0),
            Recent = (byte)((Recent << 1) | (attempt.IsCorrect ? 1 : 0)),
            Slowness = attempt.IsCorrect ? Slowness + (SlownessShare * (slowness - Slowness)) : Slowness,
            LastGrade = attempt.Grade,
            FreeAnswers = FreeAnswers + (attempt.IsFree ? 1 : 0),
            FreeDays = FreeDays + (isFreeDay ? 1 : 0),
            LastFreeDay = isFreeDay ? attempt.Day : LastFreeDay,
            WasMissedLastDay = wasMissedToday || !attempt.IsCorrect,
        };
    }
}
