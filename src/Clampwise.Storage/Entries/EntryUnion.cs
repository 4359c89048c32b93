using Clampwise.Practice;

namespace Clampwise.Storage;

/// <summary>The union of logs: each id once.</summary>
internal static class EntryUnion
{
    /// <summary>
    /// True if an entry takes the place of another one of the same id. They should be equal; if they are not, the choice must be the
    /// same on every machine and in every order: the earlier one, then the one whose written form comes first.
    /// </summary>
    public static bool Replaces(LogEntry entry, LogEntry there) => entry.At != there.At
        ? entry.At < there.At
        : JournalLine.Json(entry).AsSpan().SequenceCompareTo(JournalLine.Json(there)) < 0;

    /// <summary>True if two entries are not written the same.</summary>
    public static bool Differ(LogEntry one, LogEntry other) => !JournalLine.Json(one).AsSpan().SequenceEqual(JournalLine.Json(other));

    /// <summary>Each id once.</summary>
    public static Dictionary<EntryId, LogEntry> Of(IEnumerable<LogEntry> entries)
    {
        var union = new Dictionary<EntryId, LogEntry>();
        foreach (LogEntry entry in entries)
        {
            if (!union.TryAdd(entry.Id, entry) && Replaces(entry, union[entry.Id]))
            {
                union[entry.Id] = entry;
            }
        }

        return union;
    }
}
