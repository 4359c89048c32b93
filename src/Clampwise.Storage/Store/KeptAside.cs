using System.Globalization;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>Puts damaged files out of the way without losing them.</summary>
internal sealed class KeptAside(DataFolder folder, TimeProvider time)
{
    /// <summary>Keeps some bytes.</summary>
    /// <returns>Where they lie.</returns>
    public Result<string> Bytes(ReadOnlySpan<byte> bytes, string name)
    {
        string path = NewPath(name);
        return Disk.WriteWhole(path, bytes) is { } fault ? fault : path;
    }

    /// <summary>Moves the database, and beside it the log of its own if it left one.</summary>
    /// <returns>Where it lies.</returns>
    public Result<string> Database()
    {
        try
        {
            string path = NewPath(Path.GetFileName(folder.Database));
            Directory.CreateDirectory(folder.KeptAside);
            MoveIfThere(DatabaseRebuild.LogOf(folder.Database), DatabaseRebuild.LogOf(path));
            MoveIfThere(folder.Database, path);
            return path;
        }
        catch (Exception exception) when (Disk.IsExpected(exception))
        {
            return StorageWords.CannotWrite(folder.KeptAside, exception.Message);
        }
    }

    private static void MoveIfThere(string from, string to)
    {
        if (File.Exists(from))
        {
            File.Move(from, to);
        }
    }

    private string NewPath(string name)
    {
        string stamp = time.GetLocalNow().ToString("yyyy-MM-dd-HHmmss", CultureInfo.InvariantCulture);
        string start = Path.Combine(folder.KeptAside, $"{stamp}-{Path.GetFileNameWithoutExtension(name)}");
        string path = start + Path.GetExtension(name);
        for (int number = 2; File.Exists(path); number++)
        {
            path = $"{start}-{number}{Path.GetExtension(name)}";
        }

        return path;
    }
}
