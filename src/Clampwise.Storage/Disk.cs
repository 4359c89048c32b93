using System.Text;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>Reading and writing of files, with what goes wrong as a fault.</summary>
public static class Disk
{
    /// <summary>True for what a file system does to a program that did nothing wrong.</summary>
    // A file size limit (EFBIG) comes as ArgumentOutOfRangeException, a full disk (ENOSPC) as IOException.
    public static bool IsExpected(Exception exception) => exception is IOException or UnauthorizedAccessException or ArgumentOutOfRangeException;

    /// <summary>The text of a file in UTF-8.</summary>
    public static Result<string> ReadText(string path)
    {
        try
        {
            return File.ReadAllText(path, Encoding.UTF8);
        }
        catch (Exception exception) when (IsExpected(exception))
        {
            return StorageWords.CannotRead(path, exception.Message);
        }
    }

    /// <summary>Writes a file as a whole or not at all; see <see cref="WriteWhole{T}"/>. Its folder is made.</summary>
    /// <returns>What stood in the way; null if all went well.</returns>
    public static Fault? WriteWhole(string path, ReadOnlySpan<byte> content)
    {
        byte[] bytes = content.ToArray();
        return WriteWhole(
            path,
            stream =>
            {
                stream.Write(bytes);
                return bytes.Length;
            },
            makesFolder: true).TryGet(out _, out Fault? fault) ? null : fault;
    }

    /// <summary>
    /// Writes a file as a whole or not at all: beside it first, flushed to the disk, then put in its place. A device
    /// such as /dev/null is written to; a file put in its place would do away with it.
    /// </summary>
    /// <param name="path">Where to.</param>
    /// <param name="write">Writes the content, and leaves the stream open.</param>
    /// <param name="makesFolder">True to make its folder; else one that is not there is a fault.</param>
    public static Result<T> WriteWhole<T>(string path, Func<Stream, T> write, bool makesFolder = false) where T : notnull
    {
        string whole = Path.GetFullPath(path);
        bool isDevice = !OperatingSystem.IsWindows() && whole.StartsWith("/dev/", StringComparison.Ordinal);
        string beside = isDevice ? whole : whole + ".new";
        try
        {
            if (makesFolder)
            {
                Directory.CreateDirectory(Path.GetDirectoryName(whole)!);
            }

            T result;
            using (var stream = new FileStream(beside, FileMode.Create, FileAccess.ReadWrite, FileShare.None))
            {
                result = write(stream);
                stream.Flush(flushToDisk: !isDevice);
            }

            if (!isDevice)
            {
                File.Move(beside, whole, overwrite: true);
            }

            return result;
        }
        catch (Exception exception) when (IsExpected(exception) || exception is NotSupportedException)
        {
            if (!isDevice)
            {
                TryDelete(beside);
            }

            return StorageWords.CannotWrite(path, exception.Message);
        }
    }

    /// <summary>Deletes a file if that can be done.</summary>
    public static void TryDelete(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception exception) when (IsExpected(exception))
        {
        }
    }
}
