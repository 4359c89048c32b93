using System.Collections.Immutable;
using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>
/// Everything that one player has practised. The journal is the truth: an entry is in it, flushed to the disk, before
/// <see cref="Append"/> returns. The database beside it is what everything reads, and is made anew from the journal whenever it is
/// behind or damaged. One process at a time may write; any other one reads the journal alone. Safe for several threads.
/// </summary>
public sealed class ProgressStore : IAttemptLog, IDisposable
{
    private const int KeepMemoryEvery = 500;
    private readonly Lock _gate = new();
    private readonly StoreLock? _lock;
    private readonly Journal _journal;
    private readonly List<string> _notices;
    private EntryDatabase? _database;
    private HashSet<EntryId>? _ids;
    private Task _backup = Task.CompletedTask;
    private Task _warming = Task.CompletedTask;

    internal ProgressStore(DataFolder folder, StoreLock? held, Journal journal, EntryDatabase? database, List<string> notices) =>
        (Folder, _lock, _journal, _database, _notices) = (folder, held, journal, database, notices);

    /// <summary>Where it lies.</summary>
    public DataFolder Folder { get; }

    /// <summary>True if nothing can be kept: another process holds the folder, or it cannot be written to. A notice says which.</summary>
    public bool IsReadOnly => _lock is null;

    /// <summary>What the player should know about opening and keeping, one sentence each.</summary>
    public ImmutableArray<string> Notices
    {
        get
        {
            lock (_gate)
            {
                return [.. _notices];
            }
        }
    }

    /// <summary>
    /// Opens the store of a folder, makes it if there is none, repairs what a sudden end left behind, and starts the backup of the
    /// day. Takes tens of milliseconds, more if the database must be rebuilt: call it beside other work.
    /// </summary>
    /// <returns>The store, perhaps read-only; a fault only if the folder was written by a newer version of the program.</returns>
    public static Result<ProgressStore> Open(DataFolder folder, TimeProvider time) => new StoreOpening(folder, time).Run();

    /// <inheritdoc/>
    public Fault? Append(LogEntry entry)
    {
        lock (_gate)
        {
            if (IsReadOnly)
            {
                return StorageWords.IsReadOnly;
            }

            return Contains(entry.Id) ? null : Write([entry]);
        }
    }

    /// <inheritdoc/>
    public IReadOnlyList<LogEntry> ReadAll()
    {
        lock (_gate)
        {
            return Read(database => database.All().ToList()) ?? [.. EntryUnion.Of(ReadJournal(JournalMark.Start)).Values];
        }
    }

    /// <summary>The entries of some ids, as far as they are there: quick however long the log is.</summary>
    public IReadOnlyList<LogEntry> Find(IEnumerable<EntryId> ids)
    {
        HashSet<EntryId> wanted = [.. ids];
        lock (_gate)
        {
            return Read(database => wanted.Select(database.Find).OfType<LogEntry>().ToList())
                ?? [.. EntryUnion.Of(ReadJournal(JournalMark.Start).Where(entry => wanted.Contains(entry.Id))).Values];
        }
    }

    /// <summary>
    /// The memory state of the whole log, the same as <see cref="MemoryState.Rebuild"/> makes of <see cref="ReadAll"/>, but from a
    /// kept state and what was answered since where that can be.
    /// </summary>
    public MemoryState LoadMemory(FsrsSettings settings)
    {
        lock (_gate)
        {
            MemoryState state = LoadMemoryNow(settings);
            // The first answer would pay for what the database reads and compiles only once: better while the player reads the question.
            _warming = _warming.IsCompleted && !IsReadOnly ? Task.Run(WarmUp) : _warming;
            return state;
        }
    }

    private MemoryState LoadMemoryNow(FsrsSettings settings)
    {
        if (Read(database => database.ReadMemory()) is { } kept
            && _journal.Holds(MemoryDocument.MarkOf(kept))
            && MemoryDocument.Read(kept, settings) is { } state)
        {
            List<LogEntry> since = [.. ReadJournal(MemoryDocument.MarkOf(kept))];
            if (MemoryTail.Fold(state, since) is { } whole)
            {
                FsrsWeights weights = MemoryDocument.WeightsOf(kept);
                return since.Count < KeepMemoryEvery ? whole : Keep(whole, weights);
            }
        }

        IReadOnlyList<LogEntry> all = ReadAll();
        return Keep(MemoryState.Rebuild(all, settings), LogReading.Weights(all) ?? FsrsWeights.Default);
    }

    /// <summary>Adds the entries that are not there yet, as one write.</summary>
    /// <returns>How many were new, or what stood in the way; then none was added.</returns>
    internal Result<int> AddAll(IEnumerable<LogEntry> entries)
    {
        lock (_gate)
        {
            if (IsReadOnly)
            {
                return StorageWords.IsReadOnly;
            }

            Dictionary<EntryId, LogEntry> known = EntryUnion.Of(ReadAll());
            List<LogEntry> added = [.. EntryUnion.Of(entries).Values
                .Where(entry => !known.TryGetValue(entry.Id, out LogEntry? there) || EntryUnion.Replaces(entry, there))];
            if (added.Count == 0)
            {
                return 0;
            }

            Fault? fault = added.Count <= StoreOpening.FewEntries ? Write(added) ?? ForgetMemory() : WriteJournal(added) ?? RebuildNow();
            return fault is null ? added.Count(entry => !known.ContainsKey(entry.Id)) : fault;
        }
    }

    /// <summary>Makes the database anew from the journal.</summary>
    /// <returns>How many entries it holds now.</returns>
    public Result<int> Rebuild()
    {
        lock (_gate)
        {
            if (IsReadOnly)
            {
                return StorageWords.IsReadOnly;
            }

            return RebuildNow() is { } fault ? fault : Read(database => (int?)database.Count()) ?? 0;
        }
    }

    /// <summary>Waits for the backup of the day, writes everything into the database file, and gives the folder back.</summary>
    public void Dispose()
    {
        Task.WaitAll(_backup, _warming);
        lock (_gate)
        {
            bool isWhole = _database is not null;
            _database?.Dispose();
            _database = null;
            _journal.Dispose();
            if (isWhole && File.Exists(Folder.Database))
            {
                _lock?.Close(new FileInfo(Folder.Database).Length);
            }
            else
            {
                _lock?.Dispose();
            }
        }
    }

    /// <summary>All of the journal, sound or not.</summary>
    internal LogReadout ReadJournalWhole()
    {
        lock (_gate)
        {
            return _journal.ReadAll();
        }
    }

    /// <summary>All of the database; null if none is open.</summary>
    internal Result<ImmutableArray<LogEntry>>? ReadDatabase()
    {
        lock (_gate)
        {
            if (_database is null)
            {
                return null;
            }

            return Read(database => database.All().ToList()) is { } all ? (Result<ImmutableArray<LogEntry>>)all.ToImmutableArray() : new Fault(_notices[^1]);
        }
    }

    /// <summary>Makes a backup now.</summary>
    public Result<Backup> BackUp(Backups backups)
    {
        // The backup of the day may be under way in the same file.
        _backup.Wait();
        lock (_gate)
        {
            return IsReadOnly ? StorageWords.IsReadOnly : backups.Make(_journal);
        }
    }

    /// <summary>Makes the backup of the day, if it is missing, beside everything else.</summary>
    internal void BackUpInBackground(Backups backups)
    {
        if (_journal.End != JournalMark.Start && !backups.HasToday())
        {
            _backup = Task.Run(() => Note(backups.Make(_journal)));
        }
    }

    private void Note(Result<Backup> made)
    {
        if (!made.IsGood)
        {
            lock (_gate)
            {
                _notices.Add(StorageWords.BackupFailed(made.Fault.Message));
            }
        }
    }

    private bool Contains(EntryId id)
    {
        if (_database is not null && Read(database => (bool?)database.Contains(id)) is { } isThere)
        {
            return isThere;
        }

        _ids ??= [.. ReadJournal(JournalMark.Start).Select(entry => entry.Id)];
        return _ids.Contains(id);
    }

    private void WarmUp()
    {
        lock (_gate)
        {
            Use(database => database.WarmUp());
        }
    }

    private Fault? Write(IReadOnlyCollection<LogEntry> entries)
    {
        if (WriteJournal(entries) is { } fault)
        {
            return fault;
        }

        Use(database => database.Add(entries, _journal.End));
        return null;
    }

    private Fault? WriteJournal(IReadOnlyCollection<LogEntry> entries)
    {
        if (_journal.Append(JournalLine.EncodeAll(entries)) is { } fault)
        {
            return fault;
        }

        _ids?.UnionWith(entries.Select(entry => entry.Id));
        return null;
    }

    private Fault? RebuildNow()
    {
        EntryDatabase? old = _database;
        _database = null;
        if (!new DatabaseRebuild(Folder, _journal, _notices).Run(old).TryGet(out EntryDatabase? rebuilt, out Fault? fault))
        {
            return fault;
        }

        _database = rebuilt;
        return null;
    }

    private MemoryState Keep(MemoryState state, FsrsWeights weights)
    {
        if (!IsReadOnly)
        {
            Use(database => database.WriteMemory(MemoryDocument.Write(state, _journal.End, weights)));
        }

        return state;
    }

    private Fault? ForgetMemory()
    {
        Use(database => database.DeleteMemory());
        return null;
    }

    private IEnumerable<LogEntry> ReadJournal(JournalMark from) =>
        _journal.Read(from, new EntryReader()).Where(record => record.Entry.IsGood).Select(record => record.Entry.Value);

    private void Use(Action<EntryDatabase> work) => Read(database =>
    {
        work(database);
        return database;
    });

    // Whatever the database throws, the journal has it all: the database is given up for this run and rebuilt at the next start.
    private T? Read<T>(Func<EntryDatabase, T?> work)
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
            _notices.Add(StorageWords.DatabaseGivenUp(exception.Message));
            DatabaseRebuild.Close(_database);
            DatabaseRebuild.Delete(Folder.Database);
            _database = null;
            return default;
        }
    }
}
