using Clampwise.Practice;

namespace Clampwise.Storage;

/// <summary>The union of logs: each id once, by the rule that the log is read by (<see cref="LogReading.Replaces"/>).</summary>
internal static class EntryUnion
{
    /// <summary>True if an entry takes the place of another one of the same id.</summary>
    public static bool Replaces(LogEntry entry, LogEntry there) => LogReading.Replaces(entry, there);

    /// <summary>True if two entries are not written the same.</summary>
    public static bool Differ(LogEntry one, LogEntry other) => !JournalLine.Json(one).AsSpan().SequenceEqual(JournalLine.Json(other));

    /// <summary>Each id once.</summary>
    public static Dictionary<EntryId, LogEntry> Of(IEnumerable<LogEntry> entries) => LogReading.Unique(entries);
}
