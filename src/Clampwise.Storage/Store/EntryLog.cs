using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>
/// The log in its two places: written to the journal first and then to the database, read from the database if there is one. Not for
/// several threads at once.
/// </summary>
internal sealed class EntryLog(Journal journal, GuardedDatabase database, List<string> notices)
{
    private HashSet<EntryId>? _ids;

    /// <summary>The journal.</summary>
    public Journal Journal => journal;

    /// <summary>The database.</summary>
    public GuardedDatabase Database => database;

    /// <summary>Adds an entry unless its id is there.</summary>
    public Fault? Append(LogEntry entry) => Contains(entry.Id) ? null : Write([entry]);

    /// <summary>Adds the entries that are not there yet, or that take the place of another one of their id, so many at a time.</summary>
    /// <returns>How many ids were new; a fault if the journal could not take all of them, which says how many it took.</returns>
    public Result<int> AddAll(IEnumerable<LogEntry> entries)
    {
        int added = 0;
        foreach (LogEntry[] batch in entries.Chunk(StoreOpening.FewEntries))
        {
            Dictionary<EntryId, LogEntry> given = EntryUnion.Of(batch);
            Dictionary<EntryId, LogEntry> known = EntryUnion.Of(Find([.. given.Keys]));
            List<LogEntry> wanted = [.. given.Values.Where(entry => !known.TryGetValue(entry.Id, out LogEntry? there) || EntryUnion.Replaces(entry, there))];
            if (wanted.Count > 0 && Write(wanted) is { } fault)
            {
                return StorageWords.ImportStopped(added, fault);
            }

            added += wanted.Count(entry => !known.ContainsKey(entry.Id));
        }

        return added;
    }

    /// <summary>Every entry, each id once.</summary>
    public IReadOnlyList<LogEntry> ReadAll() =>
        database.Read(open => open.All().ToList()) ?? [.. EntryUnion.Of(ReadJournal(JournalMark.Start)).Values];

    /// <summary>The entries of some ids, as far as they are there.</summary>
    public IReadOnlyList<LogEntry> Find(HashSet<EntryId> ids) =>
        database.Read(open => ids.Select(open.Find).OfType<LogEntry>().ToList())
        ?? [.. EntryUnion.Of(ReadJournal(JournalMark.Start).Where(entry => ids.Contains(entry.Id))).Values];

    /// <summary>What was written to the journal since a mark; damaged lines are left out.</summary>
    public List<LogEntry> ReadJournal(JournalMark from)
    {
        try
        {
            return [.. journal.Read(from, new EntryReader()).Where(record => record.Entry.IsGood).Select(record => record.Entry.Value)];
        }
        catch (Exception exception) when (Disk.IsExpected(exception))
        {
            notices.Add(StorageWords.JournalUnreadable(exception.Message));
            return [];
        }
    }

    private bool Contains(EntryId id)
    {
        if (database.Read(open => (bool?)open.Contains(id)) is { } isThere)
        {
            return isThere;
        }

        _ids ??= [.. ReadJournal(JournalMark.Start).Select(entry => entry.Id)];
        return _ids.Contains(id);
    }

    private Fault? Write(IReadOnlyCollection<LogEntry> entries)
    {
        if (WriteJournal(entries) is { } fault)
        {
            return fault;
        }

        database.Use(open => open.Add(entries, journal.End));
        return null;
    }

    private Fault? WriteJournal(IReadOnlyCollection<LogEntry> entries)
    {
        if (journal.Append(JournalLine.EncodeAll(entries)) is { } fault)
        {
            return fault;
        }

        _ids?.UnionWith(entries.Select(entry => entry.Id));
        return null;
    }
}
