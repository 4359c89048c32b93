using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>
/// The database as long as it works. Whatever it throws, the journal has it all: then it is given up for this run, with a notice, and
/// made anew at the next start. Not for several threads at once.
/// </summary>
internal sealed class GuardedDatabase(DataFolder folder, EntryDatabase? database, List<string> notices)
{
    private EntryDatabase? _database = database;

    /// <summary>True if there is a database.</summary>
    public bool IsOpen => _database is not null;

    /// <summary>Asks the database; the default if there is none or it failed.</summary>
    public T? Read<T>(Func<EntryDatabase, T?> work)
    {
        if (_database is null)
        {
            return default;
        }

        try
        {
            return work(_database);
        }
        catch (Exception exception)
        {
            notices.Add(StorageWords.DatabaseGivenUp(exception.Message));
            DatabaseRebuild.Close(_database);
            DatabaseRebuild.Delete(folder.Database);
            _database = null;
            return default;
        }
    }

    /// <summary>Does something with the database, if there is one.</summary>
    public void Use(Action<EntryDatabase> work) => Read(database =>
    {
        work(database);
        return database;
    });

    /// <summary>Makes it anew from the journal.</summary>
    public Fault? Rebuild(Journal journal)
    {
        EntryDatabase? old = _database;
        _database = null;
        if (!new DatabaseRebuild(folder, journal, notices).Run(old).TryGet(out EntryDatabase? rebuilt, out Fault? fault))
        {
            return fault;
        }

        _database = rebuilt;
        return null;
    }

    /// <summary>Writes everything into the one file and closes it.</summary>
    /// <returns>How long the file is; null if there is none, or not everything could be written.</returns>
    public long? Close()
    {
        bool isWhole = IsOpen;
        Use(database => database.Dispose());
        isWhole &= IsOpen;
        _database = null;
        return isWhole && File.Exists(folder.Database) ? new FileInfo(folder.Database).Length : null;
    }
}
