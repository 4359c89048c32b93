using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>The fields of an entry as one row of a table, each in its own column.</summary>
internal sealed class CsvRow : IFieldWriter
{
    private const string RowEnd = "\r\n";
    private readonly Dictionary<Field, string> _cells = [];

    /// <summary>The row of column names.</summary>
    public static byte[] Header { get; } = Row(Fields.All.Select(field => field.Name));

    /// <summary>The row.</summary>
    public byte[] ToBytes() => Row(Fields.All.Select(field => _cells.GetValueOrDefault(field, "")));

    public void Id(Field field, Guid value) => _cells[field] = value.ToString("N");

    public void Text(Field field, string value) => _cells[field] = Guarded(VisibleText.Of(value, keepsLineEnds: true));

    public void Code(Field field, string value) => _cells[field] = value;

    public void Whole(Field field, int value) => _cells[field] = value.ToString(CultureInfo.InvariantCulture);

    public void Real(Field field, double value) => _cells[field] = value.ToString(CultureInfo.InvariantCulture);

    public void Flag(Field field, bool value) => _cells[field] = value ? "true" : "false";

    public void Time(Field field, DateTimeOffset value) =>
        _cells[field] = value.UtcDateTime.ToString("yyyy-MM-dd HH:mm:ss.fff", CultureInfo.InvariantCulture);

    public void Span(Field field, TimeSpan value) => _cells[field] = value.TotalMilliseconds.ToString(CultureInfo.InvariantCulture);

    public void Day(Field field, PracticeDay value) => _cells[field] = value.ToString();

    public void Reals(Field field, ImmutableArray<double> values) =>
        _cells[field] = string.Join(' ', values.Select(value => value.ToString(CultureInfo.InvariantCulture)));

    // What starts like a formula would be reckoned by a spreadsheet; an apostrophe makes it a text.
    private static string Guarded(string value) => value.Length > 0 && value[0] is '=' or '+' or '-' or '@' or '\t' or '\r' ? "'" + value : value;

    private static string Quoted(string cell) => cell.AsSpan().IndexOfAny(",\"\r\n") < 0
        ? cell
        : $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";

    private static byte[] Row(IEnumerable<string> cells) => Encoding.UTF8.GetBytes(string.Join(',', cells.Select(Quoted)) + RowEnd);
}
