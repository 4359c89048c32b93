using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>Reads what <see cref="JsonFieldWriter"/> wrote.</summary>
internal sealed class JsonFieldReader(JsonElement root) : IFieldReader
{
    private const decimal MostMilliseconds = long.MaxValue / TimeSpan.TicksPerMillisecond;

    public Fault? Fault { get; private set; }

    public void Report(Fault fault) => Fault ??= fault;

    public Guid? Id(Field field) =>
        Text(field) is not { } text ? null : Guid.TryParseExact(text, "N", out Guid id) ? id : Bad<Guid>(field);

    public string? Text(Field field)
    {
        if (!root.TryGetProperty(field.Encoded.EncodedUtf8Bytes, out JsonElement value))
        {
            return null;
        }

        if (value.ValueKind == JsonValueKind.String)
        {
            return value.GetString();
        }

        Report(StorageWords.BadField(field.Name));
        return null;
    }

    public string? Code(Field field) => Text(field);

    public int? Whole(Field field) => Number(field) is not { } value ? null : value.TryGetInt32(out int number) ? number : Bad<int>(field);

    public double? Real(Field field) => Number(field) is not { } value ? null : value.TryGetDouble(out double number) ? number : Bad<double>(field);

    public bool? Flag(Field field) => !root.TryGetProperty(field.Encoded.EncodedUtf8Bytes, out JsonElement value) ? null
        : value.ValueKind is JsonValueKind.True or JsonValueKind.False ? value.GetBoolean() : Bad<bool>(field);

    public DateTimeOffset? Time(Field field) => !root.TryGetProperty(field.Encoded.EncodedUtf8Bytes, out JsonElement value) ? null
        : value.ValueKind == JsonValueKind.String && value.TryGetDateTimeOffset(out DateTimeOffset time) ? time.ToUniversalTime() : Bad<DateTimeOffset>(field);

    public TimeSpan? Span(Field field) => Number(field) is not { } value ? null
        : value.TryGetDecimal(out decimal number) && Math.Abs(number) < MostMilliseconds
            ? TimeSpan.FromTicks((long)(number * TimeSpan.TicksPerMillisecond))
            : Bad<TimeSpan>(field);

    public PracticeDay? Day(Field field) => Text(field) is not { } text ? null
        : DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly date)
            ? PracticeDay.On(date)
            : Bad<PracticeDay>(field);

    public ImmutableArray<double>? Reals(Field field)
    {
        if (!root.TryGetProperty(field.Encoded.EncodedUtf8Bytes, out JsonElement value))
        {
            return null;
        }

        bool isGood = value.ValueKind == JsonValueKind.Array && value.EnumerateArray().All(item => item.ValueKind == JsonValueKind.Number);
        return isGood ? [.. value.EnumerateArray().Select(item => item.GetDouble())] : Bad<ImmutableArray<double>>(field);
    }

    private JsonElement? Number(Field field) => !root.TryGetProperty(field.Encoded.EncodedUtf8Bytes, out JsonElement value) ? null
        : value.ValueKind == JsonValueKind.Number ? value : Bad<JsonElement>(field);

    private T? Bad<T>(Field field) where T : struct
    {
        Report(StorageWords.BadField(field.Name));
        return null;
    }
}
