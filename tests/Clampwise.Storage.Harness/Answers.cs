using System.Buffers.Binary;
using Clampwise.Practice;

namespace Clampwise.Storage.Harness;

/// <summary>Made-up answers: each number has its own, the same in every process.</summary>
public static class Answers
{
    private static readonly DateTimeOffset s_start = new(2026, 3, 1, 18, 0, 0, TimeSpan.Zero);
    private static readonly DrillId s_drill = DrillId.Parse("first-six").Value;

    /// <summary>The answer of a number.</summary>
    /// <param name="number">0 or more.</param>
    /// <param name="items">How many different items there are.</param>
    public static Attempt Of(int number, int items = 300)
    {
        int mixed = Mixed(number);
        var grade = (Grade)(1 + (mixed % 4));
        DateTimeOffset at = s_start.AddMinutes(number).AddTicks(number);
        return new Attempt(
            IdOf(number), at, at.AddSeconds(-6), Item(mixed % items), s_drill, new SessionId(IdOf(-1 - (number / 50)).Value),
            PracticeDay.On(DateOnly.FromDateTime(at.UtcDateTime)), grade, grade != Grade.Missed)
        {
            Setup = "standard + 3-5@2",
            Answer = grade == Grade.Missed ? "" : $"D{mixed % 40}",
            Expected = $"D{mixed % 40}",
            DidNotKnow = grade == Grade.Missed,
            ConfusedWith = mixed % 9 == 0 ? Item(Mixed(mixed) % items).Shape : null,
            Thinking = TimeSpan.FromMilliseconds(1500 + (mixed % 4000)),
            Family = ChordFamily.Suspended,
            Foreseen = 0.5,
        };
    }

    /// <summary>The number of an answer, from its id.</summary>
    public static int NumberOf(EntryId id) => BinaryPrimitives.ReadInt32LittleEndian(id.Value.ToByteArray().AsSpan(12));

    private static ItemKey Item(int index) => new(
        new ShapeKey("E2 A2 D3 G3 B3 E4 + 3-5@2", $"^ {index % 5} 0 {1 + (index / 5 % 9)} {1 + (index / 45 % 9)} 0 {index / 405}"),
        Directions.All[index % Directions.All.Length]);

    private static EntryId IdOf(int number)
    {
        var bytes = new byte[16];
        BinaryPrimitives.WriteInt32LittleEndian(bytes, Mixed(number));
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(12), number);
        return new EntryId(new Guid(bytes));
    }

    // A multiplicative hash (Knuth, The Art of Computer Programming, 6.4), so that ids and items come in no order.
    private static int Mixed(int number) => (int)(((uint)number * 2654435761u) >> 1);
}
