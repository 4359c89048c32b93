using Clampwise.Practice;

namespace Clampwise.Storage;

/// <summary>The kinds of log entry and their codes in files. Codes and numbers never change; new kinds come at the end.</summary>
internal static class EntryKinds
{
    public const string Attempt = "attempt";
    public const string Overruled = "overruled";
    public const string Withdrawn = "withdrawn";
    public const string Skipped = "skipped";
    public const string SessionEnded = "session-ended";
    public const string Weights = "weights";
    public const string TuningHeard = "tuning-heard";

    /// <summary>All codes; the place of each is its number in the database.</summary>
    public static IReadOnlyList<string> All { get; } = [Attempt, Overruled, Withdrawn, Skipped, SessionEnded, Weights, TuningHeard];

    /// <summary>The code of an entry's kind.</summary>
    public static string CodeOf(LogEntry entry) => entry switch
    {
        Practice.Attempt => Attempt,
        GradeOverruled => Overruled,
        AttemptWithdrawn => Withdrawn,
        QuestionSkipped => Skipped,
        Practice.SessionEnded => SessionEnded,
        WeightsChosen => Weights,
        Practice.TuningHeard => TuningHeard,
        _ => throw new ArgumentOutOfRangeException(nameof(entry), entry, "This kind of entry has no form in files."),
    };
}
