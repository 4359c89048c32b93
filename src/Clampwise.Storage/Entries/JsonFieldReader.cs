using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>Reads what <see cref="JsonFieldWriter"/> wrote.</summary>
internal sealed class JsonFieldReader(JsonElement root) : IFieldReader
{
    private const int MostNumbers = 100;

    public Fault? Fault { get; private set; }

    public void Report(Fault fault) => Fault ??= fault;

    public Guid? Id(Field field) =>
        Raw(field) is not { } text ? null : Guid.TryParseExact(text, "N", out Guid id) ? id : Bad<Guid>(field);

    public string? Text(Field field)
    {
        string? text = Raw(field);
        if (text is null || field.Allows(text.Length))
        {
            return text;
        }

        Report(StorageWords.TooLong(field));
        return null;
    }

    public string? Code(Field field) => Text(field);

    public int? Whole(Field field) => Number(field) is not { } value ? null : value.TryGetInt32(out int number) && field.Allows(number) ? number : OutOfBounds<int>(field);

    public double? Real(Field field) => Number(field) is not { } value ? null : value.TryGetDouble(out double number) && field.Allows(number) ? number : OutOfBounds<double>(field);

    public bool? Flag(Field field) => !root.TryGetProperty(field.Encoded.EncodedUtf8Bytes, out JsonElement value) ? null
        : value.ValueKind is JsonValueKind.True or JsonValueKind.False ? value.GetBoolean() : Bad<bool>(field);

    public DateTimeOffset? Time(Field field) => !root.TryGetProperty(field.Encoded.EncodedUtf8Bytes, out JsonElement value) ? null
        : value.ValueKind == JsonValueKind.String && value.TryGetDateTimeOffset(out DateTimeOffset time)
            ? field.Allows(time.Year) ? time.ToUniversalTime() : OutOfBounds<DateTimeOffset>(field)
            : Bad<DateTimeOffset>(field);

    public TimeSpan? Span(Field field) => Number(field) is not { } value ? null
        : value.TryGetDecimal(out decimal number) && field.Allows((double)number)
            ? TimeSpan.FromTicks((long)(number * TimeSpan.TicksPerMillisecond))
            : OutOfBounds<TimeSpan>(field);

    public PracticeDay? Day(Field field) => Raw(field) is not { } text ? null
        : DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly date)
            ? field.Allows(date.Year) ? PracticeDay.On(date) : OutOfBounds<PracticeDay>(field)
            : Bad<PracticeDay>(field);

    public ImmutableArray<double>? Reals(Field field)
    {
        if (!root.TryGetProperty(field.Encoded.EncodedUtf8Bytes, out JsonElement value))
        {
            return null;
        }

        if (value.ValueKind != JsonValueKind.Array || value.GetArrayLength() > MostNumbers || value.EnumerateArray().Any(item => item.ValueKind != JsonValueKind.Number))
        {
            return Bad<ImmutableArray<double>>(field);
        }

        ImmutableArray<double> numbers = [.. value.EnumerateArray().Select(item => item.TryGetDouble(out double number) ? number : double.NaN)];
        return numbers.All(field.Allows) ? numbers : OutOfBounds<ImmutableArray<double>>(field);
    }

    private string? Raw(Field field)
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

    private JsonElement? Number(Field field) => !root.TryGetProperty(field.Encoded.EncodedUtf8Bytes, out JsonElement value) ? null
        : value.ValueKind == JsonValueKind.Number ? value : Bad<JsonElement>(field);

    private T? OutOfBounds<T>(Field field) where T : struct
    {
        Report(StorageWords.OutOfBounds(field));
        return null;
    }

    private T? Bad<T>(Field field) where T : struct
    {
        Report(StorageWords.BadField(field.Name));
        return null;
    }
}
