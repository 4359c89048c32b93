using System.Globalization;
using System.Text;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>
/// Held for as long as a process may write to a data folder: an open file that no other process can open (on Unix an advisory lock).
/// The file also says how the last holder left, since LiteDB does not flush what it commits: after a power cut its file may hold
/// half a transaction without any error, and must be rebuilt. The same goes for a database that failed.
/// </summary>
internal sealed class StoreLock : IDisposable
{
    private const string Open = "open";
    private const string Closed = "closed";
    private const string Doubted = "doubted";
    private readonly FileStream _stream;
    private readonly string _boot;

    private StoreLock(FileStream stream, string boot, string[] words)
    {
        (_stream, _boot) = (stream, boot);
        MayHaveLostWrites = words is [Open, var lastBoot] && lastBoot != boot;
        DatabaseBytes = words is [Closed, var text] && long.TryParse(text, CultureInfo.InvariantCulture, out long length) ? length : null;
        IsDoubted = MayHaveLostWrites || (words.Length > 0 && words is not [Open, _] && DatabaseBytes is null);
    }

    /// <summary>True if the last holder did not close and the computer was started anew since.</summary>
    public bool MayHaveLostWrites { get; }

    /// <summary>True if the database must be made anew: it may have lost writes, or it failed when it was last used.</summary>
    public bool IsDoubted { get; }

    /// <summary>How long the database was when the last holder closed it; null if it did not.</summary>
    public long? DatabaseBytes { get; }

    /// <summary>Takes the lock; a fault that says so if another process holds it.</summary>
    public static Result<StoreLock> Take(string path, string boot)
    {
        FileStream? stream = null;
        try
        {
            stream = new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, bufferSize: 0);
            var taken = new StoreLock(stream, boot, ReadWords(stream));
            Write(stream, taken.IsDoubted ? Doubted : $"{Open} {boot}");
            return taken;
        }
        catch (Exception exception) when (Disk.IsExpected(exception))
        {
            stream?.Dispose();
            string folder = Path.GetDirectoryName(path)!;
            return IsHeld(exception) ? StorageWords.InUse(folder) : StorageWords.CannotWriteFolder(folder, exception.Message);
        }
    }

    /// <summary>Notes that the database is in use and sound.</summary>
    public void Trust() => Note($"{Open} {_boot}");

    /// <summary>Notes that the database must be made anew at the next start, also if this process is killed.</summary>
    public void Doubt() => Note(Doubted);

    /// <summary>Notes that everything is written and gives the lock back.</summary>
    public void Close(long databaseBytes)
    {
        Note($"{Closed} {databaseBytes.ToString(CultureInfo.InvariantCulture)}");
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

    private void Note(string text)
    {
        try
        {
            Write(_stream, text);
        }
        catch (Exception exception) when (Disk.IsExpected(exception))
        {
            // Half a note counts as a doubt, and one that was not made at all leaves the last one.
        }
    }

    // Over what stands there, not after emptying it: a full disk has room for that.
    private static void Write(FileStream stream, string text)
    {
        stream.Position = 0;
        stream.Write(Encoding.UTF8.GetBytes(text + "\n"));
        stream.SetLength(stream.Position);
        stream.Flush(flushToDisk: true);
    }
}
