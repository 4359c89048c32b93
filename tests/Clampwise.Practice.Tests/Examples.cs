using System.Collections.Immutable;
using Clampwise.Fretboard;

namespace Clampwise.Practice.Tests;

/// <summary>Drills, worlds and event makers that the tests share.</summary>
internal static class Examples
{
    public static readonly DateTimeOffset Evening = new(2026, 3, 2, 18, 0, 0, TimeSpan.Zero);

    public static readonly PracticeDay Today = PracticeCalendar.Utc.DayOf(Evening);

    public static Drill Quay { get; } = Drill("quay", "standard + 2-4@2", "x00000", "x04430", "200000", "xx0032", "000400", "224442", "x00030", "x24002", "x00004", "x04400");

    public static Drill Lantern { get; } = Drill("lantern", "standard + 1-5@2", "004430", "044000", "044300", "000454", "540003", "x04440", "x04400", "x04430");

    public static Drill Meadow { get; } = Drill("meadow", "standard + 3-5@2", "x00000", "000000", "304000", "x04000", "200320");

    public static Repertoire Harbour { get; } = Repertoire.Of([Quay, Lantern, Meadow]);

    public static SessionWorld World { get; } = new(Harbour, PracticeCalendar.Utc, QuestionOptions.Usual);

    public static MemoryState Nothing { get; } = MemoryState.Empty(FsrsSettings.Usual);

    public static Drill Drill(string id, string setup, params string[] frettings)
    {
        Setup read = Setup.Parse(setup).Value;
        return Practice.Drill.Create(DrillId.Parse(id).Value, id, read, [.. frettings.Select(text => new DrillVoicing(Voicing.Parse(read, text).Value))]).Value;
    }

    public static PracticeItem Item(Drill drill, int voicing, Direction direction) =>
        Harbour.Find(new ItemKey(drill.Voicings[voicing].Key, direction)) ?? throw new ArgumentException("no such item");

    public static AskContext Context(MemoryState? memory = null, int seed = 1, QuestionOptions? options = null) =>
        new(Harbour, memory ?? Nothing, Today, options ?? QuestionOptions.Usual, new Random(seed));

    /// <summary>The right answer to a question, as a player who knows gives it.</summary>
    public static Answer Right(Question question) => question.Form switch
    {
        AnswerForm.Name => new Answer.Name(question.Direction switch
        {
            Direction.SeeShapeSayShapeName or Direction.SoundingNameSayShapeName => question.Subject.ShapeName,
            _ => question.Subject.SoundingName,
        }),
        AnswerForm.Place => new Answer.Placed(question.Subject.Fretting),
        AnswerForm.Choose => new Answer.Chosen(question.Choices.Select((choice, index) => (choice, index)).Single(pair => pair.choice.Voicing.Equals(question.Subject)).index),
        AnswerForm.Compare => new Answer.Compared(
            question.Subject.Equals(question.Partner!.Voicing), question.Subject.SoundsOtherwise(question.Partner.Voicing)),
        _ => new Answer.Changes(50),
    };

    /// <summary>An attempt at an item.</summary>
    public static Attempt Attempt(PracticeItem item, Grade grade, int daysAgo, int number = 0) => new(
        new EntryId(new Guid(number, (short)daysAgo, (short)item.Key.Direction, new byte[8])),
        Evening.AddDays(-daysAgo).AddSeconds(number), Evening.AddDays(-daysAgo).AddSeconds(number - 5),
        item.Key, item.Drill.Id, default, Today + -daysAgo, grade, grade != Grade.Missed)
    {
        Family = item.Family,
        Thinking = TimeSpan.FromSeconds(4),
    };

    public static MemoryState Remembered(IEnumerable<Attempt> attempts) => MemoryState.Rebuild(attempts, FsrsSettings.Usual);

    public static ImmutableArray<T> Of<T>(this SessionStep step) where T : SessionEffect => [.. step.Effects.OfType<T>()];
}
