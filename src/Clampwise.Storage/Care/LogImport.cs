using System.IO.Compression;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>
/// Takes other logs into a store: the union by id, the same in whatever order and however often. All good lines are taken, bad ones
/// are listed. Files may be plain or compressed (gzip), and lines may lack their checksum; one that has a wrong one is bad.
/// </summary>
public static class LogImport
{
    /// <summary>Takes over a file of JSON lines: an export, a backup or a journal.</summary>
    public static Result<ImportReport> File(ProgressStore store, string path) =>
        Read(path).Then(readout => Add(store, readout));

    /// <summary>Takes over a stream of JSON lines, such as standard input.</summary>
    public static Result<ImportReport> Stream(ProgressStore store, Stream stream, string name) =>
        Add(store, LogReadout.Of(stream, name, mayLackCrc: true));

    /// <summary>Takes over the data folder of another machine, or a copy of it. The other folder is only read.</summary>
    public static Result<ImportReport> Folder(ProgressStore store, DataFolder other) => System.IO.File.Exists(other.Journal)
        ? File(store, other.Journal)
        : StorageWords.NoJournal(other.Root);

    private static Result<LogReadout> Read(string path)
    {
        try
        {
            using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            using Stream text = IsZipped(file) ? new GZipStream(file, CompressionMode.Decompress) : file;
            return LogReadout.Of(text, Path.GetFileName(path), mayLackCrc: true);
        }
        catch (Exception exception) when (Disk.IsExpected(exception) || exception is InvalidDataException)
        {
            return StorageWords.CannotRead(path, exception.Message);
        }
    }

    // RFC 1952: a gzip file starts with 1F 8B.
    private static bool IsZipped(FileStream file)
    {
        bool isZipped = file.ReadByte() == 0x1F && file.ReadByte() == 0x8B;
        file.Position = 0;
        return isZipped;
    }

    private static Result<ImportReport> Add(ProgressStore store, LogReadout readout) =>
        store.AddAll(readout.Entries).Select(added => new ImportReport(readout.Entries.Length, added, readout.Faults));
}
