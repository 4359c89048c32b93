using System.IO.Compression;
using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>
/// Takes other logs into a store: the union by id, the same in whatever order and however often. All good lines are taken, each bad one
/// is reported, whatever is wrong with it. Files may be plain or compressed (gzip), and lines may lack their checksum; one that has a
/// wrong one is bad. A file is gone through line by line, so that its length costs no memory.
/// </summary>
public static class LogImport
{
    // A shorter file is taken over at once.
    private const long Long = 8 << 20;
    private const int Step = 10;

    /// <summary>Takes over a file of JSON lines: an export, a backup or a journal.</summary>
    /// <param name="store">Where to.</param>
    /// <param name="path">The file.</param>
    /// <param name="bad">Is told each bad line.</param>
    /// <param name="progress">Is told how far a long file is, at each tenth.</param>
    public static Result<ImportReport> File(ProgressStore store, string path, Action<FileFault> bad, Action<ImportProgress>? progress = null)
    {
        try
        {
            using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            using Stream text = IsZipped(file) ? new GZipStream(file, CompressionMode.Decompress) : file;
            int told = 0;
            return Add(store, text, Path.GetFileName(path), bad, read =>
            {
                int percent = file.Length < Long ? 0 : (int)(100 * file.Position / file.Length) / Step * Step;
                if (percent > told)
                {
                    told = percent;
                    progress?.Invoke(new ImportProgress(percent, read));
                }
            });
        }
        catch (Exception exception) when (IsUnreadable(exception))
        {
            return StorageWords.CannotRead(path, exception.Message);
        }
    }

    /// <summary>Takes over a stream of JSON lines, such as standard input.</summary>
    public static Result<ImportReport> Stream(ProgressStore store, Stream stream, string name, Action<FileFault> bad) => Add(store, stream, name, bad, _ => { });

    /// <summary>Takes over the data folder of another machine, or a copy of it. The other folder is only read.</summary>
    public static Result<ImportReport> Folder(ProgressStore store, DataFolder other, Action<FileFault> bad, Action<ImportProgress>? progress = null) =>
        System.IO.File.Exists(other.Journal) ? File(store, other.Journal, bad, progress) : StorageWords.NoJournal(other.Root);

    private static Result<ImportReport> Add(ProgressStore store, Stream stream, string name, Action<FileFault> bad, Action<int> readOn)
    {
        int read = 0;
        int faults = 0;
        IEnumerable<LogEntry> Good()
        {
            int line = 0;
            using IEnumerator<JournalRecord> records = Journal.ReadLines(stream, new EntryReader(), mayLackCrc: true).GetEnumerator();
            while (Next(records, () => new FileFault(name, line + 1, null, StorageWords.RestUnreadable), Tell))
            {
                line = records.Current.Line;
                if (records.Current.Entry.TryGet(out LogEntry? entry, out Fault? fault))
                {
                    read++;
                    readOn(read);
                    yield return entry;
                }
                else
                {
                    Tell(new FileFault(name, line, fault.Column, fault.Message));
                }
            }
        }

        void Tell(FileFault fault)
        {
            faults++;
            bad(fault);
        }

        return store.AddAll(Good()).Select(added => new ImportReport(read, added, faults));
    }

    // What comes before a place that the disk or the compression fails at is good.
    private static bool Next(IEnumerator<JournalRecord> records, Func<FileFault> broken, Action<FileFault> tell)
    {
        try
        {
            return records.MoveNext();
        }
        catch (Exception exception) when (IsUnreadable(exception))
        {
            tell(broken());
            return false;
        }
    }

    private static bool IsUnreadable(Exception exception) => Disk.IsExpected(exception) || exception is InvalidDataException;

    // RFC 1952: a gzip file starts with 1F 8B.
    private static bool IsZipped(FileStream file)
    {
        bool isZipped = file.ReadByte() == 0x1F && file.ReadByte() == 0x8B;
        file.Position = 0;
        return isZipped;
    }
}
