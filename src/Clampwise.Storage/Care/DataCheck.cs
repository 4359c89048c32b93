using System.Collections.Immutable;
using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>Goes through a whole store: every line of the journal, every entry of the database, every backup.</summary>
public static class DataCheck
{
    /// <summary>Checks. Reads only; what is wrong can be put right by a rebuild, a restore or by practising, as the report says.</summary>
    /// <param name="store">The store.</param>
    /// <param name="backups">Its backups.</param>
    /// <param name="now">Now, to find answers of a clock that was ahead; null to leave that out.</param>
    public static CheckReport Run(ProgressStore store, Backups backups, DateTimeOffset? now = null)
    {
        LogReadout journal = store.ReadJournalWhole();
        Result<ImmutableArray<LogEntry>>? database = store.ReadDatabase();
        ImmutableArray<string> problems =
        [
            .. journal.Faults.Select(fault => fault.ToString()),
            .. DatabaseProblems(journal.Entries, database),
            .. BackupProblems(backups, out int good),
            .. now is { } instant ? ClockProblems(journal.Entries, LogReading.LatestOn(instant)) : [],
        ];
        return new CheckReport(journal.Entries.Length, database is { IsGood: true } read ? read.Value.Length : null, good, problems);
    }

    private static IEnumerable<string> DatabaseProblems(ImmutableArray<LogEntry> journal, Result<ImmutableArray<LogEntry>>? database)
    {
        if (database is null)
        {
            return [];
        }

        if (!database.Value.TryGet(out ImmutableArray<LogEntry> entries, out Fault? fault))
        {
            return [fault.Message];
        }

        Dictionary<EntryId, LogEntry> found = EntryUnion.Of(entries);
        int missing = journal.Count(entry => !found.ContainsKey(entry.Id));
        int other = journal.Count(entry => found.TryGetValue(entry.Id, out LogEntry? there) && EntryUnion.Differ(entry, there));
        int more = entries.Length - (journal.Length - missing);
        return missing + other + more == 0 ? [] : [StorageWords.DatabaseDiffers(missing, other, more)];
    }

    private static IEnumerable<string> ClockProblems(ImmutableArray<LogEntry> journal, DateTimeOffset latest) =>
        LogReading.AheadOf(journal, latest) is [_, ..] ahead ? [StorageWords.ClockWasAhead(ahead.Length, ahead[^1].At)] : [];

    private static List<string> BackupProblems(Backups backups, out int good)
    {
        var problems = new List<string>();
        good = 0;
        foreach (Backup backup in backups.All)
        {
            Result<LogReadout> read = Backups.Read(backup);
            bool isGood = read is { IsGood: true, Value.Faults.IsEmpty: true } && read.Value.Lines >= backup.Count;
            good += isGood ? 1 : 0;
            if (!isGood)
            {
                problems.Add(read.IsGood ? StorageWords.BackupDamaged(backup.Name, read.Value.Lines, backup.Count) : read.Fault.Message);
            }
        }

        return problems;
    }
}
