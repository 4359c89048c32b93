using System.Collections.Immutable;
using Clampwise.Fretboard;
using Clampwise.Practice;
using CsCheck;

namespace Clampwise.Storage.Tests;

/// <summary>Log entries for tests: named ones, and a generator of every kind with every field.</summary>
internal static class Some
{
    public static readonly DateTimeOffset Start = new(2026, 3, 1, 18, 0, 0, TimeSpan.Zero);
    private static readonly DrillId s_drill = DrillId.Parse("first-six").Value;
    private static readonly ImmutableArray<ShapeKey> s_shapes =
        [.. DrillLibrary.Shipped.Drills.SelectMany(drill => drill.Voicings).Select(voicing => voicing.Key).Distinct()];

    /// <summary>The attempt of a number: each number has its own id, and comes a minute and a tick after the one before.</summary>
    public static Attempt Attempt(int number, Grade grade = Grade.Steady) => new(
        IdOf(number),
        Start.AddMinutes(number).AddTicks(number),
        Start.AddMinutes(number).AddSeconds(-7),
        new ItemKey(s_shapes[number % s_shapes.Length], Directions.All[number / s_shapes.Length % Directions.All.Length]),
        s_drill,
        new SessionId(IdOf(1_000_000 + (number / 50)).Value),
        PracticeDay.On(new DateOnly(2026, 3, 1)) + (number / 100),
        grade,
        grade != Grade.Missed)
    {
        Setup = "standard + 3-5@2",
        Answer = "Dm7",
        Expected = grade == Grade.Missed ? "dM7" : "Dm7",
        Thinking = TimeSpan.FromMilliseconds(2500 + (number * 37 % 3000)),
        ConfusedWith = grade == Grade.Missed ? s_shapes[(number + 1) % s_shapes.Length] : null,
        Family = ChordFamily.MinorSeventh,
        Foreseen = 0.1 + (number % 8 * 0.1),
    };

    /// <summary>An id that looks as random as a real one, the same for each number.</summary>
    public static EntryId IdOf(int number)
    {
        var bytes = new byte[16];
        new Random(number).NextBytes(bytes);
        return new EntryId(new Guid(bytes));
    }

    /// <summary>Any entry.</summary>
    public static Gen<LogEntry> Entry { get; } = MakeEntry();

    private static Gen<LogEntry> MakeEntry()
    {
        Gen<EntryId> id = Gen.Guid.Select(guid => new EntryId(guid));
        Gen<SessionId> session = Gen.Guid.Select(guid => new SessionId(guid));
        Gen<DateTimeOffset> at = Gen.Long[DateTime.UnixEpoch.Ticks, new DateTime(2100, 1, 1).Ticks].Select(ticks => new DateTimeOffset(ticks, TimeSpan.Zero));
        Gen<TimeSpan> span = Gen.Long[-TimeSpan.TicksPerDay, TimeSpan.TicksPerDay].Select(TimeSpan.FromTicks);
        Gen<PracticeDay> day = Gen.Int[700_000, 760_000].Select(number => new PracticeDay(number));
        Gen<ShapeKey> shape = Gen.Int[0, s_shapes.Length - 1].Select(index => s_shapes[index]);
        Gen<ItemKey> item = Gen.Select(shape, OneOf([.. Directions.All]), (key, direction) => new ItemKey(key, direction));
        Gen<Grade> grade = Gen.Enum<Grade>();
        Gen<string> text = Gen.OneOf(OneOf("", "Dm7", "dM7", "\u266f\ud83c\udfb8 \"quoted\" \\ \n\r\t", "=1+1", "a,b"), Gen.String[Gen.Char[' ', '~'], 0, 40]);
        Gen<LogEntry> attempt = Gen.Select(
            Gen.Select(id, at, span, item, session, day, grade, Gen.Bool).Select((i, a, s, k, e, d, g, r) => new Attempt(i, a, a - s, k, s_drill, e, d, g, r)),
            Gen.Select(text, text, text, shape.Null(), shape.Null(), Gen.Bool),
            Gen.Select(Gen.Int[0, 9], span, Gen.Bool, Gen.Int[0, 9], Gen.Enum<ChordFamily>(), Gen.Double[0, 1].Nullable()),
            (bare, words, rest) => (LogEntry)(bare with
            {
                Setup = words.Item1,
                Answer = words.Item2,
                Expected = words.Item3,
                ConfusedWith = words.Item4,
                Partner = words.Item5,
                DidNotKnow = words.Item6,
                Hints = rest.Item1,
                Thinking = rest.Item2,
                IsPrimed = rest.Item3,
                Choices = rest.Item4,
                Family = rest.Item5,
                Foreseen = rest.Item6,
            }));
        return Gen.OneOf(
            attempt,
            Gen.Select(id, at, id, grade, (i, a, of, g) => (LogEntry)new GradeOverruled(i, a, of, g)),
            Gen.Select(id, at, id, (i, a, of) => (LogEntry)new AttemptWithdrawn(i, a, of)),
            Gen.Select(id, at, item, session, Gen.Enum<SkipReason>(), (i, a, k, s, r) => (LogEntry)new QuestionSkipped(i, a, k, s, r)),
            Gen.Select(id, at, session, Gen.Enum<SessionKind>(), day, span, Gen.Bool, (i, a, s, k, d, p, c) => (LogEntry)new SessionEnded(i, a, s, k, d, p, c)),
            Gen.Select(id, at, Gen.Double[0.001, 100].Array[0, 21], text, (i, a, w, y) => (LogEntry)new WeightsChosen(i, a, [.. w], y)),
            Gen.Select(id, at, text, Gen.Int[1, 8], Gen.Double[-30, 30], Gen.Bool, (i, a, s, n, c, r) => (LogEntry)new TuningHeard(i, a, s, StringNumber.Of(n), c, r, r)));
    }

    private static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(index => values[index]);
}
