using System.Collections.Immutable;
using System.Text.Json;
using Clampwise.Practice;

namespace Clampwise.Storage;

/// <summary>Fields as members of a JSON object: times in UTC (ISO 8601), durations in milliseconds, both exact to the tick.</summary>
internal sealed class JsonFieldWriter(Utf8JsonWriter json) : IFieldWriter
{
    public void Id(Field field, Guid value) => json.WriteString(field.Encoded, value.ToString("N"));

    public void Text(Field field, string value) => json.WriteString(field.Encoded, value);

    public void Code(Field field, string value) => json.WriteString(field.Encoded, value);

    public void Whole(Field field, int value) => json.WriteNumber(field.Encoded, value);

    public void Real(Field field, double value) => json.WriteNumber(field.Encoded, value);

    public void Flag(Field field, bool value) => json.WriteBoolean(field.Encoded, value);

    public void Time(Field field, DateTimeOffset value) => json.WriteString(field.Encoded, value.UtcDateTime);

    public void Span(Field field, TimeSpan value) => json.WriteNumber(field.Encoded, (decimal)value.Ticks / TimeSpan.TicksPerMillisecond);

    public void Day(Field field, PracticeDay value) => json.WriteString(field.Encoded, value.ToString());

    public void Reals(Field field, ImmutableArray<double> values)
    {
        json.WriteStartArray(field.Encoded);
        foreach (double value in values)
        {
            json.WriteNumberValue(value);
        }

        json.WriteEndArray();
    }
}
