namespace Clampwise.Sound.Tests;

/// <summary>Files of a test.</summary>
internal static class Written
{
    /// <summary>Writes a file by a function that writes into a stream.</summary>
    public static T To<T>(string path, Func<Stream, T> write)
    {
        using FileStream stream = File.Create(path);
        return write(stream);
    }
}
