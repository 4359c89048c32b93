using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>
/// Makes the database anew from the journal, beside the old one, and puts it in its place when it is whole. Entries that only the old
/// one has, because the journal was damaged or replaced, go back into the journal first. The old one is deleted only if the journal
/// has all of it; else it is put aside.
/// </summary>
internal sealed class DatabaseRebuild(DataFolder folder, Journal journal, KeptAside aside, List<string> notices)
{
    /// <summary>True if the journal had damaged lines, or lacked entries.</summary>
    public bool FoundDamage { get; private set; }

    /// <summary>The file that is made.</summary>
    public string Target => folder.Database;

    /// <summary>Rebuilds.</summary>
    /// <param name="old">The old database if it is open; it is closed here whatever comes.</param>
    /// <returns>The new one; a fault leaves the file of the old one where it is.</returns>
    public Result<EntryDatabase> Run(EntryDatabase? old)
    {
        string beside = Path.Combine(folder.Root, "rebuild.db");
        try
        {
            old ??= OpenOld();
            JournalIndex index = ReadJournal();
            List<LogEntry> lost = [];
            bool isSaved = old is not null && Rescue(old, index, lost);
            if (lost.Count > 0)
            {
                if (journal.Append(JournalLine.EncodeAll(lost)) is { } fault)
                {
                    return fault;
                }

                notices.Add(StorageWords.SavedFromDatabase(lost.Count));
                index = journal.ReadIndex();
            }

            Close(old);
            old = null;
            Make(beside, index);
            if (PutAway(isSaved) is { } stuck)
            {
                return stuck;
            }

            File.Move(beside, folder.Database);
            return EntryDatabase.Open(folder.Database);
        }
        // A full disk, or whatever LiteDB throws.
        catch (Exception exception)
        {
            return StorageWords.CannotWrite(folder.Database, exception.Message);
        }
        finally
        {
            Close(old);
            Delete(beside);
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
        Disk.TryDelete(LogOf(path));
    }

    /// <summary>The log of its own that LiteDB keeps beside a database while it is open.</summary>
    public static string LogOf(string path) =>
        Path.Combine(Path.GetDirectoryName(path)!, Path.GetFileNameWithoutExtension(path) + "-log" + Path.GetExtension(path));

    private EntryDatabase? OpenOld()
    {
        try
        {
            return File.Exists(folder.Database) ? EntryDatabase.Open(folder.Database) : null;
        }
        catch (Exception)
        {
            return null;
        }
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

    // Looks for what only the database has. False if it could not be read to its end.
    private bool Rescue(EntryDatabase old, JournalIndex index, List<LogEntry> lost)
    {
        if (index.BadLines.Count == 0 && journal.Holds(old.Mark))
        {
            return true;
        }

        try
        {
            HashSet<EntryId> ids = index.Ids;
            lost.AddRange(old.All().Where(entry => !ids.Contains(entry.Id)));
            return true;
        }
        catch (Exception)
        {
            return false;
        }
        finally
        {
            FoundDamage |= lost.Count > 0;
        }
    }

    private void Make(string path, JournalIndex index)
    {
        Delete(path);
        using EntryDatabase database = EntryDatabase.Open(path);
        database.Fill(index.Read(), journal.End);
    }

    // A log without its database counts as an old one too: LiteDB would take it for that of the new one.
    private Fault? PutAway(bool isSaved)
    {
        if (isSaved)
        {
            Delete(folder.Database);
            return null;
        }

        if (!File.Exists(folder.Database) && !File.Exists(LogOf(folder.Database)))
        {
            return null;
        }

        FoundDamage = true;
        Result<string> moved = aside.Database();
        if (!moved.TryGet(out string? where, out Fault? fault))
        {
            return fault;
        }

        notices.Add(StorageWords.OldDatabaseKept(where));
        return null;
    }
}
