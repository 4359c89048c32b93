using System.Collections.Immutable;
using Clampwise.Practice;

namespace Clampwise.Storage;

/// <summary>What could be read of a log file.</summary>
/// <param name="Entries">The entries, each id once.</param>
/// <param name="Lines">How many lines could be read; more than there are entries if one stands twice.</param>
/// <param name="Faults">The lines that could not be read.</param>
public sealed record LogReadout(ImmutableArray<LogEntry> Entries, int Lines, ImmutableArray<FileFault> Faults)
{
    /// <summary>Reads a stream of JSON lines.</summary>
    /// <param name="stream">The stream.</param>
    /// <param name="name">The file's name, for faults.</param>
    /// <param name="mayLackCrc">True to take lines without a checksum too; a wrong one is a fault all the same.</param>
    internal static LogReadout Of(Stream stream, string name, bool mayLackCrc)
    {
        var faults = ImmutableArray.CreateBuilder<FileFault>();
        int lines = 0;
        IEnumerable<LogEntry> Good()
        {
            foreach (JournalRecord record in Journal.ReadLines(stream, new EntryReader(), mayLackCrc))
            {
                if (record.Entry.TryGet(out LogEntry? entry, out var fault))
                {
                    lines++;
                    yield return entry;
                }
                else
                {
                    faults.Add(new FileFault(name, record.Line, fault.Column, fault.Message));
                }
            }
        }

        ImmutableArray<LogEntry> entries = [.. EntryUnion.Of(Good()).Values];
        return new LogReadout(entries, lines, faults.ToImmutable());
    }
}
