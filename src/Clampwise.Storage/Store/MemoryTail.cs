using Clampwise.Practice;

namespace Clampwise.Storage;

/// <summary>Carries a kept memory state on to the end of the log.</summary>
internal static class MemoryTail
{
    /// <summary>
    /// The state with the entries that were written after it was kept; null if they reach back into what it was folded from, so that
    /// it must be folded anew: new weights, an earlier attempt changed or undone, an attempt that lies before the last one in time.
    /// </summary>
    public static MemoryState? Fold(MemoryState kept, IReadOnlyCollection<LogEntry> since)
    {
        HashSet<EntryId> own = [.. since.OfType<Attempt>().Select(attempt => attempt.Id)];
        bool reachesBack = since.Any(entry => entry switch
        {
            WeightsChosen => true,
            GradeOverruled overruled => !own.Contains(overruled.Attempt),
            AttemptWithdrawn withdrawn => !own.Contains(withdrawn.Attempt),
            _ => false,
        });
        if (reachesBack)
        {
            return null;
        }

        MemoryState state = kept;
        foreach (Attempt attempt in LogReading.Attempts(since))
        {
            if (!state.IsNext(attempt))
            {
                return null;
            }

            state = state.With(attempt);
        }

        return state;
    }
}
