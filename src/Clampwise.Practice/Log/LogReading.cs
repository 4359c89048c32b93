using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>
/// What the entries of a log mean together, whatever their order: each id once, what was undone left out, the latest overruling
/// applied, in order of time.
/// </summary>
public static class LogReading
{
    /// <summary>The attempts that count, each with the grade that counts, the earliest first.</summary>
    public static ImmutableArray<Attempt> Attempts(IEnumerable<LogEntry> entries)
    {
        Dictionary<EntryId, LogEntry> unique = Unique(entries);
        var withdrawn = new HashSet<EntryId>();
        var overruled = new Dictionary<EntryId, GradeOverruled>();
        foreach (LogEntry entry in unique.Values)
        {
            if (entry is AttemptWithdrawn undone)
            {
                withdrawn.Add(undone.Attempt);
            }
            else if (entry is GradeOverruled change && (!overruled.TryGetValue(change.Attempt, out GradeOverruled? other) || IsLater(change, other)))
            {
                overruled[change.Attempt] = change;
            }
        }

        return [.. InOrder(unique.Values.OfType<Attempt>().Where(attempt => !withdrawn.Contains(attempt.Id)))
            .Select(attempt => overruled.TryGetValue(attempt.Id, out GradeOverruled? change) ? Overruled(attempt, change.Grade) : attempt)];
    }

    /// <summary>An attempt with another grade: missed counts as wrong, anything else as right.</summary>
    public static Attempt Overruled(Attempt attempt, Grade grade) =>
        attempt with { Grade = grade, IsCorrect = grade != Grade.Missed };

    /// <summary>
    /// The latest instant that an answer counts of: a day from now. One that lies later was written under a clock that was ahead, and would hide its
    /// item until then.
    /// </summary>
    public static DateTimeOffset LatestOn(DateTimeOffset now) => now.AddDays(1);

    /// <summary>The entries without the answers that lie after an instant.</summary>
    public static IEnumerable<LogEntry> Until(IEnumerable<LogEntry> entries, DateTimeOffset latest) =>
        entries.Where(entry => entry is not Attempt || entry.At <= latest);

    /// <summary>
    /// The answers in a log as it was written that lie after an instant and whose item was not asked anew since, so that nothing is lost by it.
    /// </summary>
    public static ImmutableArray<Attempt> AheadOf(IReadOnlyList<LogEntry> asWritten, DateTimeOffset latest)
    {
        var ahead = new Dictionary<ItemKey, Attempt>();
        foreach (Attempt attempt in asWritten.OfType<Attempt>())
        {
            if (attempt.At > latest)
            {
                ahead[attempt.Item] = attempt;
            }
            else
            {
                ahead.Remove(attempt.Item);
            }
        }

        return [.. ahead.Values.OrderBy(attempt => attempt.At)];
    }

    /// <summary>The weights that count, or null for the published defaults.</summary>
    public static FsrsWeights? Weights(IEnumerable<LogEntry> entries)
    {
        WeightsChosen? latest = InOrder(Unique(entries.OfType<WeightsChosen>()).Values.Cast<WeightsChosen>()).LastOrDefault();
        return latest is { Weights.IsDefaultOrEmpty: false } && FsrsWeights.Create(latest.Weights).TryGet(out FsrsWeights? weights, out _)
            ? weights
            : null;
    }

    /// <summary>What was heard in tuning exercises, the earliest first.</summary>
    public static ImmutableArray<TuningHeard> Tunings(IEnumerable<LogEntry> entries) =>
        [.. InOrder(Unique(entries.OfType<TuningHeard>()).Values.Cast<TuningHeard>())];

    /// <summary>The entry that takes the last choice of weights back; null if none was ever made, or if it was taken back already.</summary>
    public static WeightsChosen? UndoWeights(IEnumerable<LogEntry> entries, EntryId id, DateTimeOffset at)
    {
        WeightsChosen[] choices = [.. InOrder(Unique(entries.OfType<WeightsChosen>()).Values.Cast<WeightsChosen>())];
        if (choices is [] or [.., { Why: PlanningWords.FitUndone }])
        {
            return null;
        }

        // A fit that was not taken wrote down the weights in use: what counts is the last that differs.
        WeightsChosen? other = choices.LastOrDefault(choice => !choice.Weights.AsSpan().SequenceEqual(choices[^1].Weights.AsSpan()));
        return new WeightsChosen(id, at, other?.Weights ?? [], PlanningWords.FitUndone);
    }

    /// <summary>True if one entry counts after another: by time, then by id.</summary>
    internal static bool IsLater(LogEntry one, LogEntry other) => (one.At, one.Id).CompareTo((other.At, other.Id)) > 0;

    private static IOrderedEnumerable<T> InOrder<T>(IEnumerable<T> entries) where T : LogEntry => entries.OrderBy(entry => entry.At).ThenBy(entry => entry.Id);

    /// <summary>
    /// True if an entry counts rather than another one of the same id. They should be one entry written twice; if they differ all the
    /// same, the choice must be the same on every machine and in every order: the earlier one, then the one whose text comes first.
    /// </summary>
    public static bool Replaces(LogEntry entry, LogEntry there) =>
        entry.At != there.At ? entry.At < there.At : string.CompareOrdinal(TextOf(entry), TextOf(there)) < 0;

    /// <summary>Each id once: the entry that counts.</summary>
    public static Dictionary<EntryId, LogEntry> Unique(IEnumerable<LogEntry> entries)
    {
        var unique = new Dictionary<EntryId, LogEntry>();
        foreach (LogEntry entry in entries)
        {
            if (!unique.TryAdd(entry.Id, entry) && Replaces(entry, unique[entry.Id]))
            {
                unique[entry.Id] = entry;
            }
        }

        return unique;
    }

    // All that is in it: a record's own text leaves out what a list holds and parts of a second.
    private static string TextOf(LogEntry entry) => entry switch
    {
        WeightsChosen chosen => $"{chosen} {string.Join(' ', chosen.Weights.IsDefault ? [] : chosen.Weights)}",
        Attempt attempt => $"{attempt} {attempt.AskedAt.UtcTicks}",
        _ => entry.ToString(),
    };
}
