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

    /// <summary>
    /// Writes a file as a whole or not at all: beside it first, flushed to the disk, then put in its place. Its folder is made.
    /// </summary>
    /// <returns>What stood in the way; null if all went well.</returns>
    public static Fault? WriteWhole(string path, ReadOnlySpan<byte> content)
    {
        string beside = path + ".new";
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            using (var stream = new FileStream(beside, FileMode.Create, FileAccess.Write, FileShare.None))
            {
                stream.Write(content);
                stream.Flush(flushToDisk: true);
            }

            File.Move(beside, path, overwrite: true);
            return null;
        }
        catch (Exception exception) when (IsExpected(exception))
        {
            TryDelete(beside);
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
