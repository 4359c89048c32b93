using System.Text;
using Clampwise.Storage;

namespace Clampwise.Screens;

/// <summary>Writes down what helps to mend the program when it fails, so that the player's screen needs to show one line alone.</summary>
/// <param name="folder">Where the report is written.</param>
/// <param name="time">The clock.</param>
internal sealed class FailureReport(DataFolder folder, TimeProvider time)
{
    private const string Kept = "clampwise: the program failed; everything answered so far is kept";

    /// <summary>The file of the last report.</summary>
    public string Path { get; } = In(folder);

    /// <summary>Where the report of a data folder lies.</summary>
    public static string In(DataFolder folder) => System.IO.Path.Combine(folder.Root, "failure.txt");

    /// <summary>Writes the report, in the place of an older one, and gives the line for the player.</summary>
    public string Write(Exception failure)
    {
        string report = $"Clampwise {CommandVersion()}, {time.GetUtcNow():u}, {Environment.OSVersion}\n{failure}\n";
        byte[] bytes = Encoding.UTF8.GetBytes(report);
        bool isWritten = Disk.WriteWhole(Path, stream =>
        {
            stream.Write(bytes);
            return bytes.Length;
        }).IsGood;
        return isWritten
            ? $"{Kept}. What helps to mend it stands in {Path}"
            : $"{Kept}. {failure.GetType().Name}: {failure.Message.ReplaceLineEndings(" ")}";
    }

    private static string CommandVersion() => typeof(FailureReport).Assembly.GetName().Version?.ToString(3) ?? "";
}
