using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>
/// The journal file: one checksummed line for each entry, only ever added to, each flushed to the disk before it counts as written.
/// </summary>
internal sealed class Journal : IDisposable
{
    private readonly string _path;
    private FileStream? _stream;
    private readonly Action<FileStream> _flush;

    private Journal(string path, FileStream? stream, JournalMark end, Action<FileStream>? flush = null) =>
        (_path, _stream, End, _flush) = (path, stream, end, flush ?? ToDisk);

    /// <summary>How far the journal reaches: whole, sound lines.</summary>
    public JournalMark End { get; private set; }

    /// <summary>The version that its last line was written in; 0 for an empty journal.</summary>
    public int Version { get; private init; }

    /// <summary>What lies after its end, or lay there and was cut off: bytes of a line that was not written whole.</summary>
    public long TornBytes { get; private init; }

    /// <summary>Opens the journal to add to it; makes it if there is none. A torn end is put aside and cut off.</summary>
    /// <param name="path">The file.</param>
    /// <param name="keepTorn">Is given the torn bytes before they are cut off; what it returns stops everything.</param>
    /// <param name="flush">Brings what was written to the disk; unless given the system is asked to.</param>
    public static Result<Journal> OpenToWrite(string path, Func<byte[], Fault?> keepTorn, Action<FileStream>? flush = null)
    {
        FileStream? stream = null;
        try
        {
            stream = new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.Read, bufferSize: 0);
            JournalTail tail = JournalTail.Find(stream, stream.Length);
            long torn = stream.Length - tail.End.Bytes;
            if (torn > 0 && !tail.LacksLineFeed)
            {
                if (keepTorn(ReadBytes(stream, tail.End.Bytes)) is { } fault)
                {
                    stream.Dispose();
                    return fault;
                }

                stream.SetLength(tail.End.Bytes);
            }

            stream.Position = stream.Length;
            JournalMark end = tail.LacksLineFeed ? EndLine(stream, tail.End) : tail.End;
            return new Journal(path, stream, end, flush) { TornBytes = tail.LacksLineFeed ? 0 : torn, Version = tail.Version };
        }
        catch (Exception exception) when (Disk.IsExpected(exception))
        {
            stream?.Dispose();
            return StorageWords.CannotWrite(path, exception.Message);
        }
    }

    /// <summary>Opens the journal to read it, perhaps while another process adds to it. Without a file it is empty.</summary>
    public static Result<Journal> OpenToRead(string path)
    {
        try
        {
            if (!File.Exists(path))
            {
                return new Journal(path, null, JournalMark.Start);
            }

            using FileStream stream = OpenShared(path);
            JournalTail tail = JournalTail.Find(stream, stream.Length);
            return new Journal(path, null, tail.End) { TornBytes = stream.Length - tail.End.Bytes, Version = tail.Version };
        }
        catch (Exception exception) when (Disk.IsExpected(exception))
        {
            return StorageWords.CannotRead(path, exception.Message);
        }
    }

    /// <summary>Adds lines and flushes them to the disk. If that fails, the journal is as it was.</summary>
    /// <param name="lines">One or more lines as <see cref="JournalLine.Encode"/> makes them.</param>
    public Fault? Append(ReadOnlySpan<byte> lines)
    {
        if (_stream is null)
        {
            return StorageWords.IsReadOnly;
        }

        try
        {
            _stream.Write(lines);
            _flush(_stream);
            End = new JournalMark(End.Bytes + lines.Length, JournalTail.CrcOf(JournalTail.LastLine(lines)));
            return null;
        }
        catch (Exception exception) when (Disk.IsExpected(exception))
        {
            return TakeBack() ?? StorageWords.CannotWrite(_path, exception.Message);
        }
    }

    private static void ToDisk(FileStream stream) => stream.Flush(flushToDisk: true);

    /// <summary>True if the journal reaches as far as the mark, and has the mark's line there.</summary>
    public bool Holds(JournalMark mark)
    {
        if (mark.Bytes == 0 || mark == End)
        {
            return mark.Bytes > 0 || mark.Crc.Length == 0;
        }

        if (mark.Bytes > End.Bytes)
        {
            return false;
        }

        try
        {
            using FileStream stream = OpenShared(_path);
            return JournalTail.Find(stream, mark.Bytes).End == mark;
        }
        catch (Exception exception) when (Disk.IsExpected(exception))
        {
            return false;
        }
    }

    /// <summary>Reads the lines from a mark to the end, sound or not.</summary>
    public IEnumerable<JournalRecord> Read(JournalMark from, EntryReader reader)
    {
        if (End.Bytes <= from.Bytes)
        {
            yield break;
        }

        using FileStream stream = OpenShared(_path);
        stream.Position = from.Bytes;
        foreach (JournalRecord record in ReadLines(new PartStream(stream, End.Bytes - from.Bytes), reader))
        {
            yield return record;
        }
    }

    /// <summary>Copies the sound lines before a mark, each with its line feed. May run beside writing.</summary>
    /// <returns>How many there were.</returns>
    public int CopySound(JournalMark end, Stream to)
    {
        if (end == JournalMark.Start)
        {
            return 0;
        }

        using FileStream stream = OpenShared(_path);
        var lines = new LineReader(new PartStream(stream, end.Bytes));
        int count = 0;
        while (lines.Next() is { } line)
        {
            if (JournalLine.IsSound(line.Span))
            {
                to.Write(line.Span);
                to.WriteByte((byte)'\n');
                count++;
            }
        }

        return count;
    }

    /// <summary>Looks up where each entry lies.</summary>
    public JournalIndex ReadIndex() => JournalIndex.Of(_path, End.Bytes);

    /// <summary>Reads all of it: the entries, each once, and the lines that are damaged.</summary>
    public LogReadout ReadAll()
    {
        if (End == JournalMark.Start)
        {
            return new LogReadout([], 0, []);
        }

        using FileStream stream = OpenShared(_path);
        return LogReadout.Of(new PartStream(stream, End.Bytes), Path.GetFileName(_path), mayLackCrc: false);
    }

    /// <summary>Reads the lines of a stream; empty ones are passed over.</summary>
    public static IEnumerable<JournalRecord> ReadLines(Stream stream, EntryReader reader, bool mayLackCrc = false)
    {
        var lines = new LineReader(stream);
        for (int number = 1; lines.Next() is { } line; number++)
        {
            // Programs elsewhere put a byte order mark before the first line, and end lines with two signs.
            line = mayLackCrc && number == 1 && line.Span.StartsWith("\uFEFF"u8) ? line[3..] : line;
            ReadOnlyMemory<byte> trimmed = line.Length > 0 && line.Span[^1] == '\r' ? line[..^1] : line;
            if (lines.IsCut)
            {
                yield return new JournalRecord(number, StorageWords.LineTooLong(JournalLine.Most));
            }
            else if (trimmed.Length > 0)
            {
                yield return new JournalRecord(number, JournalLine.Decode(trimmed, reader, mayLackCrc));
            }
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _stream?.Dispose();
        _stream = null;
    }

    // A line that could not be written whole must not stand in the way of the next one.
    private Fault? TakeBack()
    {
        try
        {
            _stream!.SetLength(End.Bytes);
            _stream.Position = End.Bytes;
            return null;
        }
        catch (Exception exception) when (Disk.IsExpected(exception))
        {
            Dispose();
            return StorageWords.CannotWrite(_path, exception.Message);
        }
    }

    private static JournalMark EndLine(FileStream stream, JournalMark end)
    {
        stream.Write("\n"u8);
        stream.Flush(flushToDisk: true);
        return end with { Bytes = end.Bytes + 1 };
    }

    private static byte[] ReadBytes(FileStream stream, long from)
    {
        var bytes = new byte[stream.Length - from];
        stream.Position = from;
        stream.ReadExactly(bytes);
        return bytes;
    }

    private static FileStream OpenShared(string path) => new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, 1 << 16);
}
