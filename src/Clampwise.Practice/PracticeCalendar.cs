namespace Clampwise.Practice;

/// <summary>Which practice day an instant belongs to: a wall clock with a time at which the day changes.</summary>
/// <param name="Zone">The player's time zone.</param>
/// <param name="DayStart">The wall-clock time at which a new practice day starts; 04:00 unless set otherwise, so that a late evening stays one day.</param>
public sealed record PracticeCalendar(TimeZoneInfo Zone, TimeOnly DayStart)
{
    /// <summary>04:00.</summary>
    public static TimeOnly UsualDayStart { get; } = new(4, 0);

    /// <summary>UTC, with days that start at 04:00.</summary>
    public static PracticeCalendar Utc { get; } = new(TimeZoneInfo.Utc, UsualDayStart);

    /// <summary>
    /// The practice day. It is read off the wall clock, so that the hour that daylight saving takes away or repeats moves nothing
    /// but that hour.
    /// </summary>
    public PracticeDay DayOf(DateTimeOffset instant)
    {
        DateTime wall = TimeZoneInfo.ConvertTime(instant, Zone).DateTime;
        var day = PracticeDay.On(DateOnly.FromDateTime(wall));
        return TimeOnly.FromDateTime(wall) < DayStart ? day + -1 : day;
    }
}
