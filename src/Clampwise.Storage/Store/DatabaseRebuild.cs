using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>
/// Makes the database anew from the journal, beside the old one, and puts it in its place when it is whole. Entries that only the old
/// one has, because the journal was damaged or replaced, go back into the journal first.
/// </summary>
internal sealed class DatabaseRebuild(DataFolder folder, Journal journal, List<string> notices)
{
    /// <summary>True if the journal had damaged lines, or lacked entries.</summary>
    public bool FoundDamage { get; private set; }

    /// <summary>Rebuilds.</summary>
    /// <param name="old">The old database if it can be read; it is closed here.</param>
    public Result<EntryDatabase> Run(EntryDatabase? old)
    {
        string beside = Path.Combine(folder.Root, "rebuild.db");
        try
        {
            Dictionary<EntryId, LogEntry> entries = ReadJournal(out bool isSound);
            if (old is not null && (!isSound || !journal.Holds(old.Mark)) && Rescue(old, entries) is { } fault)
            {
                return fault;
            }

            Close(old);
            Delete(beside);
            using (EntryDatabase database = EntryDatabase.Open(beside))
            {
                database.Fill(entries.Values, journal.End);
            }

            Delete(folder.Database);
            File.Move(beside, folder.Database);
            return EntryDatabase.Open(folder.Database);
        }
        // A full disk, or whatever LiteDB throws: the journal has it all.
        catch (Exception exception)
        {
            Close(old);
            Delete(beside);
            return StorageWords.CannotWrite(folder.Database, exception.Message);
        }
    }

    /// <summary>Closes a database, also one that fails at it: it is given up anyway.</summary>
    public static void Close(EntryDatabase? database)
    {
        try
        {
            database?.Dispose();
        }
        catch (Exception)
        {
        }
    }

    /// <summary>Deletes a database and the log of its own that it keeps beside it.</summary>
    public static void Delete(string path)
    {
        Disk.TryDelete(path);
        Disk.TryDelete(Path.Combine(Path.GetDirectoryName(path)!, Path.GetFileNameWithoutExtension(path) + "-log" + Path.GetExtension(path)));
    }

    private Dictionary<EntryId, LogEntry> ReadJournal(out bool isSound)
    {
        LogReadout readout = journal.ReadAll();
        isSound = readout.Faults.IsEmpty;
        if (!isSound)
        {
            FoundDamage = true;
            notices.Add(StorageWords.JournalHasBadLines(readout.Faults.Length, readout.Faults[0].Line));
        }

        return readout.Entries.ToDictionary(entry => entry.Id);
    }

    private Fault? Rescue(EntryDatabase old, Dictionary<EntryId, LogEntry> entries)
    {
        List<LogEntry> lost = [];
        try
        {
            lost.AddRange(old.All().Where(entry => !entries.ContainsKey(entry.Id)));
        }
        catch (Exception exception)
        {
            notices.Add(StorageWords.DatabaseGivenUp(exception.Message));
        }

        if (lost.Count == 0)
        {
            return null;
        }

        FoundDamage = true;
        if (journal.Append(JournalLine.EncodeAll(lost)) is { } fault)
        {
            return fault;
        }

        notices.Add(StorageWords.SavedFromDatabase(lost.Count));
        lost.ForEach(entry => entries[entry.Id] = entry);
        return null;
    }
}
