using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;

namespace Clampwise.Commands;

/// <summary>Prints results as JSON, one object a line.</summary>
internal static class JsonLines
{
    // Sharps and accented words stay readable: the output is no part of a web page.
    private static readonly JsonContext s_context = new(new JsonSerializerOptions
    {
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Converters = { new JsonStringEnumConverter<StringState>(JsonNamingPolicy.CamelCase) },
    });

    /// <summary>Prints one object.</summary>
    public static void Print<T>(TextWriter to, T row) where T : notnull =>
        to.WriteLine(JsonSerializer.Serialize(row, (JsonTypeInfo<T>)s_context.GetTypeInfo(typeof(T))!));
}

/// <summary>The shapes of JSON that the commands print.</summary>
[JsonSerializable(typeof(NamedVoicingRow))]
[JsonSerializable(typeof(BadLineRow))]
[JsonSerializable(typeof(SetupRow))]
[JsonSerializable(typeof(CheckRow))]
[JsonSerializable(typeof(CountRow))]
[JsonSerializable(typeof(ImportRow))]
[JsonSerializable(typeof(BadEntryRow))]
[JsonSerializable(typeof(TargetRow))]
[JsonSerializable(typeof(PairRow))]
[JsonSerializable(typeof(FoundRow))]
[JsonSerializable(typeof(DegreeRow))]
[JsonSerializable(typeof(WeakRow))]
[JsonSerializable(typeof(WeekRow))]
[JsonSerializable(typeof(GroupRow))]
[JsonSerializable(typeof(DueRow))]
[JsonSerializable(typeof(ConfusedRow))]
[JsonSerializable(typeof(StillHadRow))]
[JsonSerializable(typeof(ShapeRow))]
[JsonSerializable(typeof(ExplainedRow))]
[JsonSerializable(typeof(DrillRow))]
[JsonSerializable(typeof(SettingRow))]
[JsonSerializable(typeof(FindingRow))]
[JsonSerializable(typeof(ErrorRow))]
[JsonSerializable(typeof(BesideRow))]
[JsonSerializable(typeof(MovedRow))]
[JsonSerializable(typeof(MemoryRow))]
[JsonSerializable(typeof(FileRow))]
[JsonSerializable(typeof(FrettingCountRow))]
internal sealed partial class JsonContext : JsonSerializerContext;
