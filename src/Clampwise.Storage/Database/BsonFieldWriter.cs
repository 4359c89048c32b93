using System.Collections.Immutable;
using Clampwise.Practice;
using LiteDB;

namespace Clampwise.Storage;

/// <summary>
/// Fields as members of a database document. Texts that come back over and over stand in a table of their own and are named by a
/// number; times are UTC ticks, since the database rounds its own dates to milliseconds.
/// </summary>
internal sealed class BsonFieldWriter(BsonDocument document, TextTable texts) : IFieldWriter
{
    public void Id(Field field, Guid value) => document[field.Short] = value;

    public void Text(Field field, string value) => document[field.Short] = texts.NumberOf(value);

    public void Code(Field field, string value) => document[field.Short] = texts.NumberOf(value);

    public void Whole(Field field, int value) => document[field.Short] = value;

    public void Real(Field field, double value) => document[field.Short] = value;

    public void Flag(Field field, bool value) => document[field.Short] = value;

    public void Time(Field field, DateTimeOffset value) => document[field.Short] = value.UtcTicks;

    public void Span(Field field, TimeSpan value) => document[field.Short] = value.Ticks;

    public void Day(Field field, PracticeDay value) => document[field.Short] = value.Number;

    public void Reals(Field field, ImmutableArray<double> values) => document[field.Short] = new BsonArray(values.Select(value => new BsonValue(value)));
}
