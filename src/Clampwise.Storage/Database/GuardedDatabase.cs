using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>
/// The database as long as it works. Whatever it throws, the journal is there: then it is given up for this run, with a notice, and
/// made anew at the next start. Its file stays until then, for a damaged journal may lack what it has. Not for several threads at once.
/// </summary>
/// <param name="rebuild">Makes it anew.</param>
/// <param name="held">Where its failing is noted; null if nothing may be written, and then there is no database.</param>
/// <param name="database">The database; null if none can be had.</param>
/// <param name="notices">What the player should know.</param>
internal sealed class GuardedDatabase(DatabaseRebuild rebuild, StoreLock? held, EntryDatabase? database, List<string> notices)
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
            held?.Doubt();
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
    /// <returns>What stood in the way; then there is none in this run.</returns>
    public Fault? Rebuild()
    {
        EntryDatabase? old = _database;
        _database = null;
        if (!rebuild.Run(old).TryGet(out EntryDatabase? rebuilt, out Fault? fault))
        {
            held?.Doubt();
            return fault;
        }

        _database = rebuilt;
        held?.Trust();
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
        var file = new FileInfo(rebuild.Target);
        return isWhole && file.Exists ? file.Length : null;
    }
}
