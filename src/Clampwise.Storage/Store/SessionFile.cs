using System.Buffers;
using System.Collections.Immutable;
using System.Text.Json;
using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>
/// Keeps the session that was left, so that it can be taken up again. It is a convenience and not part of the log: without it a new
/// session is planned, and no answer is lost.
/// </summary>
public static class SessionFile
{
    private const int Version = 1;

    /// <summary>Keeps a session; any other that was kept gives way.</summary>
    /// <returns>What stood in the way; null if all went well.</returns>
    public static Fault? Save(DataFolder folder, SessionSnapshot session)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true }))
        {
            Write(json, session);
        }

        return Disk.WriteWhole(folder.Session, buffer.WrittenSpan);
    }

    /// <summary>The session that was kept; null if there is none, or none that can be read.</summary>
    public static SessionSnapshot? Load(DataFolder folder)
    {
        try
        {
            if (!File.Exists(folder.Session))
            {
                return null;
            }

            using JsonDocument document = JsonDocument.Parse(File.ReadAllBytes(folder.Session));
            JsonElement root = document.RootElement;
            return root.GetProperty("v").GetInt32() == Version ? Read(root) : null;
        }
        // Made by another version or damaged: see the summary. FormatException is what a refused key throws.
        catch (Exception exception) when (Disk.IsExpected(exception) || exception is JsonException or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            return null;
        }
    }

    /// <summary>Forgets the session that was kept, since it has come to its end.</summary>
    public static void Forget(DataFolder folder) => Disk.TryDelete(folder.Session);

    private static void Write(Utf8JsonWriter json, SessionSnapshot session)
    {
        json.WriteStartObject();
        json.WriteNumber("v"u8, Version);
        json.WriteString("id"u8, session.Id.ToString());
        json.WriteString("kind"u8, Codes<SessionKind>.Of(session.Kind));
        if (session.Title is { } title)
        {
            json.WriteString("title"u8, title);
        }

        json.WriteNumber("day"u8, session.Day.Number);
        if (session.Length is { } length)
        {
            json.WriteNumber("lengthTicks"u8, length.Ticks);
        }

        json.WriteNumber("practisedTicks"u8, session.Practised.Ticks);
        json.WriteNumber("seed"u8, session.Seed);
        json.WriteNumber("closersLeft"u8, session.ClosersLeft);
        json.WriteNumber("spacing"u8, session.Spacing);
        WriteArray(json, "queue", session.Queue, item => WriteItem(json, item));
        WriteArray(json, "close", session.Close, item => WriteItem(json, item));
        WriteArray(json, "asked", session.Asked, item => json.WriteStringValue(item.ToString()));
        WriteArray(json, "answered", session.Answered, answer => WriteAnswer(json, answer));
        json.WriteEndObject();
    }

    private static void WriteItem(Utf8JsonWriter json, SnapshotItem item)
    {
        json.WriteStartObject();
        json.WriteString("item"u8, item.Item.ToString());
        json.WriteString("part"u8, Codes<SessionPart>.Of(item.Part));
        json.WriteEndObject();
    }

    private static void WriteAnswer(Utf8JsonWriter json, SnapshotAnswer answer)
    {
        json.WriteStartObject();
        json.WriteString("attempt"u8, answer.Attempt.ToString());
        json.WriteString("part"u8, Codes<SessionPart>.Of(answer.Part));
        if (answer.StabilityBefore is { } before)
        {
            json.WriteNumber("before"u8, before);
        }

        json.WriteNumber("after"u8, answer.StabilityAfter);
        json.WriteEndObject();
    }

    private static void WriteArray<T>(Utf8JsonWriter json, string name, ImmutableArray<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (T item in items)
        {
            write(item);
        }

        json.WriteEndArray();
    }

    private static SessionSnapshot Read(JsonElement root) => new(
        SessionId.Parse(Text(root, "id")).Value,
        Codes<SessionKind>.Parse(Text(root, "kind")).Value,
        new PracticeDay(root.GetProperty("day").GetInt32()),
        root.TryGetProperty("lengthTicks", out JsonElement length) ? TimeSpan.FromTicks(length.GetInt64()) : null,
        TimeSpan.FromTicks(root.GetProperty("practisedTicks").GetInt64()),
        root.GetProperty("seed").GetInt32(),
        ReadArray(root, "queue", ReadItem),
        ReadArray(root, "close", ReadItem),
        root.GetProperty("closersLeft").GetInt32(),
        root.GetProperty("spacing").GetInt32(),
        ReadArray(root, "asked", item => ItemKey.Parse(item.GetString() ?? "").Value),
        ReadArray(root, "answered", ReadAnswer))
    {
        Title = root.TryGetProperty("title", out JsonElement title) ? title.GetString() : null,
    };

    private static SnapshotItem ReadItem(JsonElement item) => new(ItemKey.Parse(Text(item, "item")).Value, Codes<SessionPart>.Parse(Text(item, "part")).Value);

    private static SnapshotAnswer ReadAnswer(JsonElement answer) => new(
        EntryId.Parse(Text(answer, "attempt")).Value,
        Codes<SessionPart>.Parse(Text(answer, "part")).Value,
        answer.TryGetProperty("before", out JsonElement before) ? before.GetDouble() : null,
        answer.GetProperty("after").GetDouble());

    private static ImmutableArray<T> ReadArray<T>(JsonElement root, string name, Func<JsonElement, T> read) =>
        [.. root.GetProperty(name).EnumerateArray().Select(read)];

    private static string Text(JsonElement root, string name) => root.GetProperty(name).GetString() ?? "";
}
