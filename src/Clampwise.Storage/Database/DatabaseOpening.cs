using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>
/// Opens the database and brings it to where the journal is: as it is, with the newest entries added, or made anew. Entries that only
/// the database has, because the journal was damaged or replaced, go back into the journal.
/// </summary>
internal sealed class DatabaseOpening(DataFolder folder, Journal journal, KeptAside aside, List<string> notices)
{
    /// <summary>True if a newer version of the program made the file; then nothing was done.</summary>
    public bool IsNewer { get; private set; }

    /// <summary>True if the journal or the database was damaged, so that a backup may hold more.</summary>
    public bool LostSomething { get; private set; }

    /// <summary>Opens; null if no database can be had, and the journal must do alone.</summary>
    public EntryDatabase? Open(StoreLock held)
    {
        if (!File.Exists(folder.Database))
        {
            DatabaseRebuild.Delete(folder.Database);
            return Rebuild();
        }

        if (held.MayHaveLostWrites)
        {
            notices.Add(StorageWords.RebuiltAfterStop);
            DatabaseRebuild.Delete(folder.Database);
            return Rebuild();
        }

        long length = new FileInfo(folder.Database).Length;
        return held.DatabaseBytes is { } closed && closed != length
            ? PutAside(StorageWords.WrongLength(length, closed))
            : OpenFile();
    }

    private EntryDatabase? OpenFile()
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

            return database.FileSchema == EntryDatabase.Schema && journal.Holds(database.Mark) ? BringUp(database) : Rebuild(database);
        }
        // A damaged file makes LiteDB throw nearly anything; none of it is a loss, as the journal has it all.
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
        LostSomething = true;
        Result<string> moved = aside.Move(folder.Database);
        DatabaseRebuild.Delete(folder.Database);
        notices.Add(moved.IsGood ? StorageWords.DatabaseKeptAside(moved.Value, why) : moved.Fault.Message);
        return Rebuild();
    }

    private EntryDatabase? Rebuild(EntryDatabase? old = null)
    {
        var rebuild = new DatabaseRebuild(folder, journal, notices);
        Result<EntryDatabase> rebuilt = rebuild.Run(old);
        LostSomething |= rebuild.FoundDamage;
        if (rebuilt.TryGet(out EntryDatabase? database, out Fault? fault))
        {
            return database;
        }

        notices.Add(StorageWords.DatabaseUnusable(fault.Message));
        return null;
    }
}
