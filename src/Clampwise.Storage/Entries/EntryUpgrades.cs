using System.Text.Json;
using System.Text.Json.Nodes;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>
/// Brings entries that were written in an older version to the current one when they are read: the journal is only ever added to,
/// so old lines stay as they are.
/// </summary>
/// <param name="steps">The changes of each version to the next, the first one from version 1 to version 2.</param>
internal sealed class EntryUpgrades(params IReadOnlyList<Action<JsonObject>> steps)
{
    /// <summary>The steps up to now. Version 1 is the first.</summary>
    public static EntryUpgrades Current { get; } = new();

    /// <summary>The version that entries have afterwards.</summary>
    public int Target => steps.Count + 1;

    /// <summary>The entry in the current version; refused if it was written by a newer program.</summary>
    public Result<JsonElement> Bring(JsonElement entry)
    {
        if (!entry.TryGetProperty("v"u8, out JsonElement stated) || stated.ValueKind != JsonValueKind.Number || !stated.TryGetInt32(out int version) || version < 1)
        {
            return StorageWords.FieldMissing(Fields.Version.Name);
        }

        if (version > Target)
        {
            return StorageWords.NewerEntry(version, Target);
        }

        return version == Target ? entry : Upgraded(JsonObject.Create(entry)!, version);
    }

    private JsonElement Upgraded(JsonObject entry, int version)
    {
        foreach (Action<JsonObject> step in steps.Skip(version - 1))
        {
            step(entry);
        }

        entry[Fields.Version.Name] = Target;
        using JsonDocument document = JsonDocument.Parse(entry.ToJsonString());
        return document.RootElement.Clone();
    }
}
