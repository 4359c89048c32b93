using System.Collections.Immutable;

namespace Clampwise.Storage;

/// <summary>What a check of a store found.</summary>
/// <param name="JournalEntries">Entries of the journal that could be read.</param>
/// <param name="DatabaseEntries">Entries of the database; null if it was not open, as when the store is read-only.</param>
/// <param name="GoodBackups">Backups that can be read to their end.</param>
/// <param name="Problems">What is wrong, one sentence each; empty if all is well.</param>
public sealed record CheckReport(int JournalEntries, int? DatabaseEntries, int GoodBackups, ImmutableArray<string> Problems)
{
    /// <summary>True if nothing is wrong.</summary>
    public bool IsGood => Problems.IsEmpty;
}
