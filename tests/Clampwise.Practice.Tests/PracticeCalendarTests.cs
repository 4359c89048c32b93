namespace Clampwise.Practice.Tests;

public class PracticeCalendarTests
{
    // A zone of our own with the rules of central Europe (one hour east, summer time from the last Sunday of March to that of
    // October): the machine's zone data need not be there.
    private static readonly PracticeCalendar s_local = new(
        TimeZoneInfo.CreateCustomTimeZone("harbour", TimeSpan.FromHours(1), "harbour", "harbour", "harbour summer",
        [
            TimeZoneInfo.AdjustmentRule.CreateAdjustmentRule(
                DateTime.MinValue.Date, DateTime.MaxValue.Date, TimeSpan.FromHours(1),
                TimeZoneInfo.TransitionTime.CreateFloatingDateRule(new DateTime(1, 1, 1, 2, 0, 0), 3, 5, DayOfWeek.Sunday),
                TimeZoneInfo.TransitionTime.CreateFloatingDateRule(new DateTime(1, 1, 1, 3, 0, 0), 10, 5, DayOfWeek.Sunday)),
        ]),
        PracticeCalendar.UsualDayStart);

    [Theory]
    [InlineData("2026-01-10T02:59:59Z", "2026-01-09")]
    [InlineData("2026-01-10T03:00:00Z", "2026-01-10")]
    [InlineData("2026-07-10T01:59:59Z", "2026-07-09")]
    [InlineData("2026-07-10T02:00:00Z", "2026-07-10")]
    // The night on which the clock is put on: 04:00 comes an hour early.
    [InlineData("2026-03-29T01:59:59Z", "2026-03-28")]
    [InlineData("2026-03-29T02:00:00Z", "2026-03-29")]
    // The night on which it is put back: 02:30 comes twice, both times on the evening's day.
    [InlineData("2026-10-25T00:30:00Z", "2026-10-24")]
    [InlineData("2026-10-25T01:30:00Z", "2026-10-24")]
    [InlineData("2026-10-25T03:00:00Z", "2026-10-25")]
    public void The_day_changes_at_four_on_the_wall_clock(string instant, string date) =>
        Assert.Equal(date, s_local.DayOf(DateTimeOffset.Parse(instant)).ToString());

    [Fact]
    public void Days_are_whole_numbers_apart() =>
        Assert.Equal(1, s_local.DayOf(DateTimeOffset.Parse("2026-01-10T03:00:00Z")) - s_local.DayOf(DateTimeOffset.Parse("2026-01-10T02:59:59Z")));
}
