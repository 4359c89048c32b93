using Clampwise.Fretboard;
using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>Makes log entries from their fields. Keeps the keys that it has read, since a long log repeats them over and over. Not for several threads at once.</summary>
internal sealed class EntryReader(EntryUpgrades upgrades)
{
    private const int MostKept = 20_000;
    private readonly Dictionary<string, ItemKey> _items = [];
    private readonly Dictionary<string, ShapeKey> _shapes = [];
    private readonly Dictionary<string, DrillId> _drills = [];

    /// <summary>A reader of the current version.</summary>
    public EntryReader() : this(EntryUpgrades.Current)
    {
    }

    /// <summary>What brings older entries to the version that is read here.</summary>
    public EntryUpgrades Upgrades => upgrades;

    /// <summary>An entry, or the first thing that is wrong with its fields.</summary>
    public Result<LogEntry> Read(IFieldReader from)
    {
        int version = Need(from, Fields.Version, from.Whole(Fields.Version));
        string kind = from.Code(Fields.Kind) ?? "";
        var id = new EntryId(Need(from, Fields.Id, from.Id(Fields.Id)));
        DateTimeOffset at = Need(from, Fields.At, from.Time(Fields.At));
        LogEntry? entry = kind switch
        {
            EntryKinds.Attempt => ReadAttempt(from, id, at),
            EntryKinds.Overruled => new GradeOverruled(id, at, AttemptId(from), Code<Grade>(from, Fields.Grade)),
            EntryKinds.Withdrawn => new AttemptWithdrawn(id, at, AttemptId(from)),
            EntryKinds.Skipped => new QuestionSkipped(id, at, Item(from), Session(from), Code<SkipReason>(from, Fields.Reason)),
            EntryKinds.SessionEnded => ReadSession(from, id, at),
            EntryKinds.Weights => new WeightsChosen(id, at, from.Reals(Fields.Weights) ?? [], from.Text(Fields.Why) ?? ""),
            EntryKinds.TuningHeard => ReadTuning(from, id, at),
            _ => null,
        };
        return from.Fault is { } fault ? fault : entry is null ? StorageWords.NoSuchCode(kind, EntryKinds.All) : entry with { Schema = version };
    }

    private Attempt ReadAttempt(IFieldReader from, EntryId id, DateTimeOffset at) => new(
        id,
        at,
        Before(from, at, Need(from, Fields.Shown, from.Span(Fields.Shown))),
        Item(from),
        from.Text(Fields.Drill) is { } drill ? Cached(from, _drills, drill, DrillId.Parse) : default,
        Session(from),
        Need(from, Fields.Day, from.Day(Fields.Day)),
        Code<Grade>(from, Fields.Grade),
        Need(from, Fields.Right, from.Flag(Fields.Right)))
    {
        Setup = from.Text(Fields.Setup) ?? "",
        Answer = from.Text(Fields.Answer) ?? "",
        Expected = from.Text(Fields.Expected) ?? "",
        DidNotKnow = from.Flag(Fields.Unknown) ?? false,
        ConfusedWith = Shape(from, Fields.ConfusedWith),
        Partner = Shape(from, Fields.Partner),
        Hints = from.Whole(Fields.Hints) ?? 0,
        Thinking = Need(from, Fields.Thinking, from.Span(Fields.Thinking)),
        IsPrimed = from.Flag(Fields.Primed) ?? false,
        Choices = from.Whole(Fields.Choices) ?? 0,
        Family = from.Code(Fields.Family) is { } family ? Codes<ChordFamily>.Parse(family).Or(from) : default,
        Foreseen = from.Real(Fields.Foreseen),
    };

    private static SessionEnded ReadSession(IFieldReader from, EntryId id, DateTimeOffset at) => new(
        id,
        at,
        Session(from),
        Code<SessionKind>(from, Fields.Way),
        Need(from, Fields.Day, from.Day(Fields.Day)),
        Need(from, Fields.Practised, from.Span(Fields.Practised)),
        from.Flag(Fields.CutShort) ?? false);

    private static TuningHeard ReadTuning(IFieldReader from, EntryId id, DateTimeOffset at)
    {
        int number = Need(from, Fields.String, from.Whole(Fields.String));
        bool isString = number is >= 1 and <= StringNumber.Most;
        if (!isString)
        {
            from.Report(StorageWords.BadField(Fields.String.Name));
        }

        return new TuningHeard(
            id,
            at,
            from.Text(Fields.Setup) ?? "",
            StringNumber.Of(isString ? number : 1),
            Need(from, Fields.Cents, from.Real(Fields.Cents)),
            Need(from, Fields.StringRight, from.Flag(Fields.StringRight)),
            Need(from, Fields.Right, from.Flag(Fields.Right)));
    }

    private ItemKey Item(IFieldReader from) => Cached(from, _items, Need(from, Fields.Item, from.Text(Fields.Item)), ItemKey.Parse)!;

    private ShapeKey? Shape(IFieldReader from, Field field) =>
        from.Text(field) is { } text ? Cached(from, _shapes, text, ShapeKey.Parse) : null;

    private static SessionId Session(IFieldReader from) => new(Need(from, Fields.Session, from.Id(Fields.Session)));

    private static EntryId AttemptId(IFieldReader from) => new(Need(from, Fields.Attempt, from.Id(Fields.Attempt)));

    private static T Code<T>(IFieldReader from, Field field) where T : struct, Enum =>
        Codes<T>.Parse(Need(from, field, from.Code(field))).Or(from);

    private static DateTimeOffset Before(IFieldReader from, DateTimeOffset at, TimeSpan shown)
    {
        long ticks = at.Ticks - shown.Ticks;
        if (ticks >= DateTimeOffset.MinValue.Ticks && ticks <= DateTimeOffset.MaxValue.Ticks)
        {
            return new DateTimeOffset(ticks, TimeSpan.Zero);
        }

        from.Report(StorageWords.BadField(Fields.Shown.Name));
        return at;
    }

    private static T Need<T>(IFieldReader from, Field field, T? value) where T : struct => value ?? Missing(from, field, default(T));

    private static string Need(IFieldReader from, Field field, string? value) => value ?? Missing(from, field, "");

    private static T Missing<T>(IFieldReader from, Field field, T instead)
    {
        from.Report(StorageWords.FieldMissing(field.Name));
        return instead;
    }

    private static T? Cached<T>(IFieldReader from, Dictionary<string, T> cache, string text, Func<string, Result<T>> read) where T : notnull
    {
        if (cache.TryGetValue(text, out T? known))
        {
            return known;
        }

        T? value = read(text).Or(from);
        if (value is not null && from.Fault is null)
        {
            // A file of nothing but different keys must not fill the memory.
            if (cache.Count >= MostKept)
            {
                cache.Clear();
            }

            cache[text] = value;
        }

        return value;
    }
}
