using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>Where the log is kept. The log is the truth; whatever else is stored can be rebuilt from it.</summary>
public interface IAttemptLog
{
    /// <summary>
    /// Adds an entry. When it returns without a fault the entry outlives a power cut. An entry whose id is there already is left
    /// as it is, and that is no fault.
    /// </summary>
    /// <returns>What stood in the way; null if all went well.</returns>
    Fault? Append(LogEntry entry);

    /// <summary>Every entry, each id once, in no particular order.</summary>
    IReadOnlyList<LogEntry> ReadAll();
}
