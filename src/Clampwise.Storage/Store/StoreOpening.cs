using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>Opens a store step by step: folder, lock, journal, database, backup of the day.</summary>
/// <param name="folder">The data folder.</param>
/// <param name="time">The clock that dates backups and files put aside.</param>
/// <param name="version">The version of entries that this program writes.</param>
internal sealed class StoreOpening(DataFolder folder, TimeProvider time, int version = LogEntry.CurrentSchema)
{
    /// <summary>Up to so many entries are added to a database one by one; beyond, it is quicker to rebuild it.</summary>
    public const int FewEntries = 2_000;

    private readonly List<string> _notices = [];
    private readonly KeptAside _aside = new(folder, time);

    public Result<ProgressStore> Run()
    {
        if (MakeFolder() is { } noFolder)
        {
            return OpenToRead(noFolder);
        }

        Result<StoreLock> taken = StoreLock.Take(folder.LockFile, BootMark.Read(time));
        return taken.IsGood ? OpenToWrite(taken.Value) : OpenToRead(taken.Fault);
    }

    private Result<ProgressStore> OpenToWrite(StoreLock held)
    {
        var repair = new JournalRepair(folder, _aside, _notices);
        if (!repair.Open().TryGet(out Journal? journal, out Fault? fault))
        {
            held.Dispose();
            return OpenToRead(fault);
        }

        var rebuild = new DatabaseRebuild(folder, journal, _aside, _notices);
        var opening = new DatabaseOpening(folder, journal, rebuild, _aside, _notices);
        EntryDatabase? database = journal.Version > version ? null : BackUpBeforeMigration(journal, opening).Open(held);
        if (journal.Version > version || opening.IsNewer)
        {
            journal.Dispose();
            held.Dispose();
            return StorageWords.NewerFolder(folder.Root);
        }

        var store = new ProgressStore(folder, held, journal, new GuardedDatabase(rebuild, held, database, _notices), _notices, time);
        var backups = new Backups(folder, time);
        if (repair.LostSomething || opening.LostSomething)
        {
            OfferBackup(store, backups);
        }

        store.BackUpInBackground(backups);
        return store;
    }

    private Result<ProgressStore> OpenToRead(Fault why)
    {
        _notices.Add(why.Message);
        if (!Journal.OpenToRead(folder.Journal).TryGet(out Journal? journal, out Fault? fault))
        {
            return fault;
        }

        if (journal.Version > version)
        {
            return StorageWords.NewerFolder(folder.Root);
        }

        var rebuild = new DatabaseRebuild(folder, journal, _aside, _notices);
        return new ProgressStore(folder, null, journal, new GuardedDatabase(rebuild, null, null, _notices), _notices, time);
    }

    private DatabaseOpening BackUpBeforeMigration(Journal journal, DatabaseOpening opening)
    {
        if (journal.Version > 0 && journal.Version < version && new Backups(folder, time).Make(journal, journal.End, $"v{journal.Version}") is { IsGood: false } failed)
        {
            _notices.Add(StorageWords.BackupFailed(failed.Fault.Message));
        }

        return opening;
    }

    private void OfferBackup(ProgressStore store, Backups backups)
    {
        HashSet<EntryId> have = [.. store.ReadAll().Select(entry => entry.Id)];
        if (backups.NewestGood() is { } good && good.Entries.Count(entry => !have.Contains(entry.Id)) is > 0 and var more)
        {
            _notices.Add(StorageWords.BackupOffered(good.Backup.Name, more));
        }
    }

    private Fault? MakeFolder()
    {
        try
        {
            Directory.CreateDirectory(folder.Root);
            return null;
        }
        catch (Exception exception) when (Disk.IsExpected(exception))
        {
            return StorageWords.CannotWriteFolder(folder.Root, exception.Message);
        }
    }
}
