using System.Collections.Immutable;
using Clampwise.Practice;
using Clampwise.Theory;
using LiteDB;

namespace Clampwise.Storage;

/// <summary>Reads what <see cref="BsonFieldWriter"/> wrote.</summary>
internal sealed class BsonFieldReader(BsonDocument document, TextTable texts) : IFieldReader
{
    public Fault? Fault { get; private set; }

    public void Report(Fault fault) => Fault ??= fault;

    public Guid? Id(Field field) => Find(field, BsonType.Guid)?.AsGuid;

    public string? Text(Field field) => Find(field, BsonType.Int32) is not { } value ? null : texts.TextOf(value.AsInt32) ?? Bad<string>(field);

    public string? Code(Field field) => Text(field);

    public int? Whole(Field field) => Find(field, BsonType.Int32)?.AsInt32;

    public double? Real(Field field) => Find(field, BsonType.Double)?.AsDouble;

    public bool? Flag(Field field) => Find(field, BsonType.Boolean)?.AsBoolean;

    public DateTimeOffset? Time(Field field) => Find(field, BsonType.Int64)?.AsInt64 is not { } ticks ? null
        : ticks >= DateTimeOffset.MinValue.Ticks && ticks <= DateTimeOffset.MaxValue.Ticks ? new DateTimeOffset(ticks, TimeSpan.Zero) : None<DateTimeOffset>(field);

    public TimeSpan? Span(Field field) => Find(field, BsonType.Int64) is { } value ? TimeSpan.FromTicks(value.AsInt64) : null;

    public PracticeDay? Day(Field field) => Find(field, BsonType.Int32) is { } value ? new PracticeDay(value.AsInt32) : null;

    public ImmutableArray<double>? Reals(Field field) =>
        Find(field, BsonType.Array) is not { } value ? null : [.. value.AsArray.Select(item => item.AsDouble)];

    private BsonValue? Find(Field field, BsonType type) =>
        !document.TryGetValue(field.Short, out BsonValue value) ? null : value.Type == type ? value : Bad<BsonValue>(field);

    private T? None<T>(Field field) where T : struct
    {
        Report(StorageWords.BadField(field.Name));
        return null;
    }

    private T? Bad<T>(Field field) where T : class
    {
        Report(StorageWords.BadField(field.Name));
        return null;
    }
}
