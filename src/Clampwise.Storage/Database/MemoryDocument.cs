using Clampwise.Practice;
using LiteDB;

namespace Clampwise.Storage;

/// <summary>
/// A memory state as a document. It is a shortcut past folding the whole log at each start, and stands for nothing by itself: it
/// counts only for the build of the practice code, the settings and the stretch of journal that it was folded with.
/// </summary>
internal static class MemoryDocument
{
    public const string Id = "memory";

    /// <summary>Writes a state.</summary>
    public static BsonDocument Write(MemoryState state, JournalMark mark, FsrsWeights weights)
    {
        using var stream = new MemoryStream();
        using (var writer = new BinaryWriter(stream))
        {
            MemoryBytes.Write(writer, state);
        }

        return new BsonDocument
        {
            ["_id"] = Id,
            ["build"] = Build,
            ["bytes"] = mark.Bytes,
            ["crc"] = mark.Crc,
            ["settings"] = SettingsText(state.Model.Settings),
            ["weights"] = new BsonArray(weights.Values.Select(weight => new BsonValue(weight))),
            ["state"] = stream.ToArray(),
        };
    }

    /// <summary>How far in the journal a kept state reaches.</summary>
    public static JournalMark MarkOf(BsonDocument document) => new(document["bytes"].AsInt64, document["crc"].AsString);

    /// <summary>The weights with which a kept state was folded.</summary>
    public static FsrsWeights WeightsOf(BsonDocument document) =>
        FsrsWeights.Create([.. document["weights"].AsArray.Select(weight => weight.AsDouble)]).Value;

    /// <summary>The state; null if it was folded by other code or with other settings.</summary>
    public static MemoryState? Read(BsonDocument document, FsrsSettings settings)
    {
        if (document["build"].AsGuid != Build || document["settings"].AsString != SettingsText(settings))
        {
            return null;
        }

        using var reader = new BinaryReader(new MemoryStream(document["state"].AsBinary, writable: false));
        return MemoryBytes.Read(reader, MemoryState.Empty(settings, WeightsOf(document)));
    }

    // Changes with every change of the code that folds.
    private static Guid Build { get; } = typeof(MemoryState).Module.ModuleVersionId;

    private static string SettingsText(FsrsSettings settings) => settings.ToString();
}
