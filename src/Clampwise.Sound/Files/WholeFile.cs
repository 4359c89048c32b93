using Clampwise.Theory;

namespace Clampwise.Sound.Files;

/// <summary>Writes files that are either whole or not there.</summary>
internal static class WholeFile
{
    private const string PartSuffix = ".part";

    /// <summary>Writes beside the path and moves the file there at the end; nothing stays behind when writing fails.</summary>
    public static Result<T> Write<T>(string path, Func<Stream, T> write) where T : notnull
    {
        string part = IsDevice(path) ? path : path + PartSuffix;
        try
        {
            T result;
            using (var stream = new FileStream(part, FileMode.Create, FileAccess.ReadWrite))
            {
                result = write(stream);
            }

            if (part != path)
            {
                File.Move(part, path, overwrite: true);
            }

            return result;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            if (part != path)
            {
                TryDelete(part);
            }

            return SoundWords.CannotWrite(path, problem.Message);
        }
    }

    // A device such as /dev/null is written to; a file moved into its place would do away with it.
    private static bool IsDevice(string path) =>
        !OperatingSystem.IsWindows() && path.Length > 0 && Path.GetFullPath(path).StartsWith("/dev/", StringComparison.Ordinal);

    private static void TryDelete(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            // The place itself can't be written, so nothing was left there.
        }
    }
}
