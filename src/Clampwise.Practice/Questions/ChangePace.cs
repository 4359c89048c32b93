namespace Clampwise.Practice;

/// <summary>Clean changes in a minute (common practice, no source): 30 first, then 60. The step between is our judgement.</summary>
public static class ChangePace
{
    /// <summary>From here on a change counts as made in time.</summary>
    public const int RightFrom = 30;

    /// <summary>From here on it is steady.</summary>
    public const int SteadyFrom = 45;

    /// <summary>From here on it is instant.</summary>
    public const int InstantFrom = 60;

    /// <summary>The grade of so many changes; never instant at first sight.</summary>
    public static Grade GradeOf(int changes, bool isFirstSight) => changes switch
    {
        < RightFrom => Grade.Missed,
        < SteadyFrom => Grade.Strained,
        < InstantFrom => Grade.Steady,
        _ => isFirstSight ? Grade.Steady : Grade.Instant,
    };
}
