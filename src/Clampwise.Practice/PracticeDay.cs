using System.Globalization;

namespace Clampwise.Practice;

/// <summary>
/// A day of practice, which need not start at midnight: whole numbers, so that their difference is the days of the memory model.
/// Which day an instant belongs to is settled once, when a question is answered, by <see cref="PracticeCalendar"/>.
/// </summary>
/// <param name="Number">Days since 1 January of year 1, as in <see cref="DateOnly.DayNumber"/>.</param>
public readonly record struct PracticeDay(int Number) : IComparable<PracticeDay>
{
    /// <summary>The calendar date on which the day starts. Throws outside the years 1 to 9999.</summary>
    public DateOnly Date => DateOnly.FromDayNumber(Number);

    /// <summary>The day that starts on a date.</summary>
    public static PracticeDay On(DateOnly date) => new(date.DayNumber);

    /// <summary>Days from the second up to the first; negative if the second is later.</summary>
    public static int operator -(PracticeDay later, PracticeDay earlier) => later.Number - earlier.Number;

    /// <summary>The day so many days later.</summary>
    public static PracticeDay operator +(PracticeDay day, int days) => new(day.Number + days);

    public static bool operator <(PracticeDay left, PracticeDay right) => left.Number < right.Number;

    public static bool operator >(PracticeDay left, PracticeDay right) => left.Number > right.Number;

    public static bool operator <=(PracticeDay left, PracticeDay right) => left.Number <= right.Number;

    public static bool operator >=(PracticeDay left, PracticeDay right) => left.Number >= right.Number;

    /// <inheritdoc/>
    public int CompareTo(PracticeDay other) => Number.CompareTo(other.Number);

    /// <summary>The date as year-month-day (ISO 8601).</summary>
    public override string ToString() => Date.ToString("O", CultureInfo.InvariantCulture);
}
