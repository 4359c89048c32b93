using System.Globalization;
using System.Text;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>
/// Held for as long as a process may write to a data folder: an open file that no other process can open (on Unix an advisory lock).
/// The file also says how the last holder left, since LiteDB does not flush what it commits: after a power cut its file may hold
/// half a transaction without any error, and must be rebuilt.
/// </summary>
internal sealed class StoreLock : IDisposable
{
    private const string Open = "open";
    private const string Closed = "closed";
    private readonly FileStream _stream;

    private StoreLock(FileStream stream, bool mayHaveLostWrites, long? databaseBytes) =>
        (_stream, MayHaveLostWrites, DatabaseBytes) = (stream, mayHaveLostWrites, databaseBytes);

    /// <summary>True if the last holder did not close and the computer was started anew since.</summary>
    public bool MayHaveLostWrites { get; }

    /// <summary>How long the database was when the last holder closed it; null if it did not.</summary>
    public long? DatabaseBytes { get; }

    /// <summary>Takes the lock; a fault that says so if another process holds it.</summary>
    public static Result<StoreLock> Take(string path, string boot)
    {
        FileStream? stream = null;
        try
        {
            stream = new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, bufferSize: 0);
            string[] words = ReadWords(stream);
            bool isLost = words is [Open, var lastBoot] && lastBoot != boot;
            long? bytes = words is [Closed, var text] && long.TryParse(text, CultureInfo.InvariantCulture, out long length) ? length : null;
            Write(stream, $"{Open} {boot}");
            return new StoreLock(stream, isLost, bytes);
        }
        catch (Exception exception) when (Disk.IsExpected(exception))
        {
            stream?.Dispose();
            string folder = Path.GetDirectoryName(path)!;
            return IsHeld(exception) ? StorageWords.InUse(folder) : StorageWords.CannotWriteFolder(folder, exception.Message);
        }
    }

    /// <summary>Notes that everything is written and gives the lock back.</summary>
    public void Close(long databaseBytes)
    {
        try
        {
            Write(_stream, $"{Closed} {databaseBytes.ToString(CultureInfo.InvariantCulture)}");
        }
        catch (Exception exception) when (Disk.IsExpected(exception))
        {
            // Then the next one rebuilds the database after a restart of the computer, at no loss.
        }

        Dispose();
    }

    /// <inheritdoc/>
    public void Dispose() => _stream.Dispose();

    // EWOULDBLOCK on Linux and macOS, ERROR_SHARING_VIOLATION on Windows.
    private static bool IsHeld(Exception exception) => exception is IOException { HResult: 11 or 35 or unchecked((int)0x80070020) };

    private static string[] ReadWords(FileStream stream)
    {
        var bytes = new byte[Math.Min(stream.Length, 200)];
        stream.ReadExactly(bytes);
        return Encoding.UTF8.GetString(bytes).Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
    }

    private static void Write(FileStream stream, string text)
    {
        stream.SetLength(0);
        stream.Position = 0;
        stream.Write(Encoding.UTF8.GetBytes(text + "\n"));
        stream.Flush(flushToDisk: true);
    }
}
