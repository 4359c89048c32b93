using System.Buffers.Binary;
using Clampwise.Practice;

namespace Clampwise.Storage.Harness;

/// <summary>A year of practice, made up: sixty answers a day, on the shipped drills, a new shape now and then.</summary>
public static class Year
{
    private const int Days = 365;
    private const int AnswersADay = 60;
    private const int DaysToAnItem = 2;

    /// <summary>The answers, oldest first.</summary>
    /// <param name="today">The day after the last one of the year.</param>
    public static IEnumerable<Attempt> Answers(DateOnly today)
    {
        PracticeItem[] items = [.. Repertoire.Of(DrillLibrary.Shipped.Drills).Items];
        var random = new Random(365);
        for (int day = 0; day < Days; day++)
        {
            DateOnly date = today.AddDays(day - Days);
            int met = Math.Min(items.Length, 12 + (day * items.Length / Days / DaysToAnItem));
            for (int i = 0; i < AnswersADay; i++)
            {
                PracticeItem item = items[random.Next(met)];
                var grade = (Grade)Math.Clamp(1 + random.Next(10) / 2, 1, 4);
                var at = new DateTimeOffset(date, new TimeOnly(18, 0), TimeSpan.Zero).AddSeconds(12 * i);
                yield return new Attempt(IdOf(day, i + 1), at, at.AddSeconds(-6), item.Key, item.Drill.Id, new SessionId(IdOf(day, 0).Value), PracticeDay.On(date), grade, grade != Grade.Missed)
                {
                    Setup = item.Drill.Setup.ToString(),
                    Answer = "D",
                    Expected = "D",
                    DidNotKnow = grade == Grade.Missed,
                    Thinking = TimeSpan.FromMilliseconds(1500 + random.Next(4000)),
                    Family = item.Family,
                    Foreseen = 0.85,
                };
            }
        }
    }

    private static EntryId IdOf(int day, int number)
    {
        var bytes = new byte[16];
        BinaryPrimitives.WriteInt32LittleEndian(bytes, (day * AnswersADay * 2) + number + 1);
        return new EntryId(new Guid(bytes));
    }
}
