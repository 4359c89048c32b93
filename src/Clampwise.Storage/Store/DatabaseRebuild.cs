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
            JournalIndex index = ReadJournal();
            if (old is not null && (index.BadLines.Count > 0 || !journal.Holds(old.Mark)) && Rescue(old, index.Ids) is { } lost)
            {
                if (journal.Append(JournalLine.EncodeAll(lost)) is { } fault)
                {
                    return fault;
                }

                notices.Add(StorageWords.SavedFromDatabase(lost.Count));
                index = journal.ReadIndex();
            }

            Close(old);
            Delete(beside);
            using (EntryDatabase database = EntryDatabase.Open(beside))
            {
                database.Fill(index.Read(), journal.End);
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

    private JournalIndex ReadJournal()
    {
        JournalIndex index = journal.ReadIndex();
        if (index.BadLines.Count > 0)
        {
            FoundDamage = true;
            notices.Add(StorageWords.JournalHasBadLines(index.BadLines.Count, index.BadLines[0]));
        }

        return index;
    }

    // What only the database has; null if there is nothing.
    private List<LogEntry>? Rescue(EntryDatabase old, HashSet<EntryId> ids)
    {
        List<LogEntry> lost = [];
        try
        {
            lost.AddRange(old.All().Where(entry => !ids.Contains(entry.Id)));
        }
        catch (Exception exception)
        {
            notices.Add(StorageWords.DatabaseGivenUp(exception.Message));
        }

        FoundDamage |= lost.Count > 0;
        return lost.Count > 0 ? lost : null;
    }
}
