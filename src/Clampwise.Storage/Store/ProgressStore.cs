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
    private readonly Lock _gate = new();
    private readonly StoreLock? _lock;
    private readonly EntryLog _log;
    private readonly MemoryKeeper _memory;
    private readonly List<string> _notices;
    private Task _backup = Task.CompletedTask;
    private Task _warming = Task.CompletedTask;

    internal ProgressStore(DataFolder folder, StoreLock? held, Journal journal, GuardedDatabase database, List<string> notices, TimeProvider time)
    {
        (Folder, _lock, _notices) = (folder, held, notices);
        _log = new EntryLog(journal, database, notices);
        _memory = new MemoryKeeper(_log, mayWrite: held is not null, time);
    }

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
            return IsReadOnly ? StorageWords.IsReadOnly : _log.Append(entry);
        }
    }

    /// <inheritdoc/>
    public IReadOnlyList<LogEntry> ReadAll()
    {
        lock (_gate)
        {
            return _log.ReadAll();
        }
    }

    /// <summary>The entries of some ids, as far as they are there: quick however long the log is.</summary>
    public IReadOnlyList<LogEntry> Find(IEnumerable<EntryId> ids)
    {
        lock (_gate)
        {
            return _log.Find([.. ids]);
        }
    }

    /// <summary>
    /// The memory state of the whole log, the same as <see cref="MemoryState.Rebuild"/> makes of <see cref="ReadAll"/>, but from a
    /// kept state and what was answered since where that can be. Answers that lie in the future, from a clock that was ahead, are left out.
    /// </summary>
    public MemoryState LoadMemory(FsrsSettings settings)
    {
        lock (_gate)
        {
            MemoryState state = _memory.Load(settings);
            // The first answer would pay for what the database reads and compiles only once: better while the player reads the question.
            _warming = _warming.IsCompleted && !IsReadOnly ? Task.Run(WarmUp) : _warming;
            return state;
        }
    }

    /// <summary>Makes the database anew from the journal.</summary>
    /// <returns>How many entries it holds now.</returns>
    public Result<int> Rebuild()
    {
        lock (_gate)
        {
            Fault? fault = IsReadOnly ? StorageWords.IsReadOnly : _log.Database.Rebuild();
            return fault is not null ? fault : _log.Database.Read(database => (int?)database.Count()) ?? 0;
        }
    }

    /// <summary>Makes a backup now.</summary>
    public Result<Backup> BackUp(Backups backups)
    {
        // The backup of the day may be under way in the same file.
        _backup.Wait();
        lock (_gate)
        {
            return IsReadOnly ? StorageWords.IsReadOnly : backups.Make(_log.Journal, _log.Journal.End);
        }
    }

    /// <summary>Waits for the backup of the day, writes everything into the database file, and gives the folder back.</summary>
    public void Dispose()
    {
        Task.WaitAll(_backup, _warming);
        lock (_gate)
        {
            long? databaseBytes = _log.Database.Close();
            _log.Journal.Dispose();
            if (databaseBytes is { } bytes)
            {
                _lock?.Close(bytes);
            }
            else
            {
                _lock?.Dispose();
            }
        }
    }

    /// <summary>Takes over entries from elsewhere.</summary>
    /// <returns>How many were new; a fault if the journal could not take all of them, which says how many it took.</returns>
    internal Result<int> AddAll(IEnumerable<LogEntry> entries)
    {
        lock (_gate)
        {
            if (IsReadOnly)
            {
                return StorageWords.IsReadOnly;
            }

            _memory.Forget();
            return _log.AddAll(entries);
        }
    }

    /// <summary>All of the journal, sound or not.</summary>
    internal LogReadout ReadJournalWhole()
    {
        lock (_gate)
        {
            return _log.Journal.ReadAll();
        }
    }

    /// <summary>All of the database; null if none is open.</summary>
    internal Result<ImmutableArray<LogEntry>>? ReadDatabase()
    {
        lock (_gate)
        {
            if (!_log.Database.IsOpen)
            {
                return null;
            }

            List<LogEntry>? all = _log.Database.Read(database => database.All().ToList());
            return all is not null ? (Result<ImmutableArray<LogEntry>>)all.ToImmutableArray() : new Fault(_notices[^1]);
        }
    }

    /// <summary>Makes the backup of the day, if it is missing, beside everything else.</summary>
    internal void BackUpInBackground(Backups backups)
    {
        JournalMark end = _log.Journal.End;
        if (end != JournalMark.Start && !backups.HasToday())
        {
            _backup = Task.Run(() => Note(backups.Make(_log.Journal, end)));
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

    private void WarmUp()
    {
        lock (_gate)
        {
            _log.Database.Use(database => database.WarmUp());
        }
    }
}
