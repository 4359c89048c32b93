using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>
/// Opens the database and brings it to where the journal is: as it is, with the newest entries added, or made anew. Entries that only
/// the database has, because the journal was damaged or replaced, go back into the journal.
/// </summary>
internal sealed class DatabaseOpening(DataFolder folder, Journal journal, DatabaseRebuild rebuild, KeptAside aside, List<string> notices)
{
    private bool _wasPutAside;

    /// <summary>True if a newer version of the program made the file; then nothing was done.</summary>
    public bool IsNewer { get; private set; }

    /// <summary>True if the journal or the database was damaged, so that a backup may hold more.</summary>
    public bool LostSomething => _wasPutAside || rebuild.FoundDamage;

    /// <summary>Opens; null if no database can be had, and the journal must do alone.</summary>
    public EntryDatabase? Open(StoreLock held)
    {
        EntryDatabase? database = File.Exists(folder.Database) ? OpenThere(held) : Rebuild(null);
        if (database is not null)
        {
            held.Trust();
        }
        else if (!IsNewer)
        {
            held.Doubt();
        }

        return database;
    }

    private EntryDatabase? OpenThere(StoreLock held)
    {
        if (held.MayHaveLostWrites)
        {
            notices.Add(StorageWords.RebuiltAfterStop);
        }

        long length = new FileInfo(folder.Database).Length;
        return held.DatabaseBytes is { } closed && closed != length
            ? PutAside(StorageWords.WrongLength(length, closed))
            : OpenFile(held.IsDoubted);
    }

    private EntryDatabase? OpenFile(bool isDoubted)
    {
        EntryDatabase? database = null;
        try
        {
            database = EntryDatabase.Open(folder.Database);
            IsNewer = database.FileSchema > EntryDatabase.Schema;
            if (IsNewer)
            {
                database.Dispose();
                return null;
            }

            return !isDoubted && database.FileSchema == EntryDatabase.Schema && journal.Holds(database.Mark) ? BringUp(database) : Rebuild(database);
        }
        // A damaged file makes LiteDB throw nearly anything. The journal has it all, unless it is damaged too: so the file is kept.
        catch (Exception exception)
        {
            DatabaseRebuild.Close(database);
            return PutAside(exception.Message);
        }
    }

    private EntryDatabase? BringUp(EntryDatabase database)
    {
        List<LogEntry> missing = [.. journal.Read(database.Mark, new EntryReader()).Where(record => record.Entry.IsGood).Select(record => record.Entry.Value)];
        if (missing.Count > StoreOpening.FewEntries)
        {
            return Rebuild(database);
        }

        if (missing.Count > 0)
        {
            database.Add(missing, journal.End);
        }

        return database;
    }

    private EntryDatabase? PutAside(string why)
    {
        _wasPutAside = true;
        if (!aside.Database().TryGet(out string? where, out Fault? fault))
        {
            notices.Add(StorageWords.DatabaseUnusable(fault.Message));
            return null;
        }

        notices.Add(StorageWords.DatabaseKeptAside(where, why));
        return Rebuild(null);
    }

    private EntryDatabase? Rebuild(EntryDatabase? old)
    {
        if (rebuild.Run(old).TryGet(out EntryDatabase? database, out Fault? fault))
        {
            return database;
        }

        notices.Add(StorageWords.DatabaseUnusable(fault.Message));
        return null;
    }
}
