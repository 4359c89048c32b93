using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>One line of the journal as it was read.</summary>
/// <param name="Line">The number of the line, counted from 1 at the place where reading began.</param>
/// <param name="Entry">The entry, or what is wrong with the line.</param>
internal readonly record struct JournalRecord(int Line, Result<LogEntry> Entry);
