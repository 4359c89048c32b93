using Clampwise.Practice;

namespace Clampwise.Storage;

/// <summary>Keeps the memory state in the database, so that a start need not fold the whole log.</summary>
internal sealed class MemoryKeeper(EntryLog log, bool mayWrite, TimeProvider time)
{
    private const int KeepEvery = 500;

    /// <summary>The state of the whole log, but for answers of a clock that was ahead: they count for nothing until then.</summary>
    public MemoryState Load(FsrsSettings settings)
    {
        DateTimeOffset latest = LogReading.LatestOn(time.GetUtcNow());
        if (log.Database.Read(database => database.ReadMemory()) is { } kept
            && log.Journal.Holds(MemoryDocument.MarkOf(kept))
            && MemoryDocument.Read(kept, settings) is { } state)
        {
            List<LogEntry> since = log.ReadJournal(MemoryDocument.MarkOf(kept));
            if (MemoryTail.Fold(state, since) is { } whole && whole.LatestAt <= latest)
            {
                return since.Count < KeepEvery ? whole : Keep(whole, MemoryDocument.WeightsOf(kept));
            }
        }

        IReadOnlyList<LogEntry> all = log.ReadAll();
        LogEntry[] counted = [.. LogReading.Until(all, latest)];
        var rebuilt = MemoryState.Rebuild(counted, settings);
        return counted.Length == all.Count ? Keep(rebuilt, LogReading.Weights(all) ?? FsrsWeights.Default) : rebuilt;
    }

    /// <summary>Forgets the kept state, since entries came that may reach back before it.</summary>
    public void Forget() => log.Database.Use(database => database.DeleteMemory());

    private MemoryState Keep(MemoryState state, FsrsWeights weights)
    {
        if (mayWrite)
        {
            log.Database.Use(database => database.WriteMemory(MemoryDocument.Write(state, log.Journal.End, weights)));
        }

        return state;
    }
}
