using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>Writes a log for others: the same log gives the same bytes, in whatever order its entries come.</summary>
public static class LogExport
{
    /// <summary>As JSON lines with checksums, the form that <see cref="LogImport"/> and the journal read.</summary>
    public static void WriteJsonLines(IEnumerable<LogEntry> entries, Stream to)
    {
        foreach (LogEntry entry in InOrder(entries))
        {
            to.Write(JournalLine.Encode(entry));
        }
    }

    /// <summary>As a table for spreadsheets (RFC 4180, UTF-8 with a byte order mark, so that a spreadsheet sees that it is UTF-8).</summary>
    public static void WriteCsv(IEnumerable<LogEntry> entries, Stream to)
    {
        to.Write([0xEF, 0xBB, 0xBF]);
        to.Write(CsvRow.Header);
        foreach (LogEntry entry in InOrder(entries))
        {
            var row = new CsvRow();
            EntryWriter.Write(row, entry);
            to.Write(row.ToBytes());
        }
    }

    /// <summary>Writes a file as a whole or not at all.</summary>
    /// <returns>What stood in the way; null if all went well.</returns>
    public static Fault? WriteFile(IEnumerable<LogEntry> entries, string path, Action<IEnumerable<LogEntry>, Stream> form)
    {
        using var bytes = new MemoryStream();
        form(entries, bytes);
        return Disk.WriteWhole(path, bytes.GetBuffer().AsSpan(0, (int)bytes.Length));
    }

    private static IOrderedEnumerable<LogEntry> InOrder(IEnumerable<LogEntry> entries) => entries.OrderBy(entry => entry.At).ThenBy(entry => entry.Id);
}
