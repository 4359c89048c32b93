using System.Globalization;
using Clampwise.Storage;

namespace Clampwise.Commands;

/// <summary>Finds the process that holds a file open.</summary>
internal static class LockHolder
{
    /// <summary>
    /// Such as <c>process 4711 (clampwise)</c>; null where that cannot be found out. On Linux by the open files under /proc (proc(5)),
    /// which shows those of the same user; other systems do not tell without more rights.
    /// </summary>
    public static string? Of(string path)
    {
        if (!OperatingSystem.IsLinux())
        {
            return null;
        }

        string full = Path.GetFullPath(path);
        IEnumerable<string> others = Directory.EnumerateDirectories("/proc")
            .Where(folder => int.TryParse(Path.GetFileName(folder), CultureInfo.InvariantCulture, out int id) && id != Environment.ProcessId);
        return others.FirstOrDefault(process => HasOpen(process, full)) is { } holder ? $"process {Path.GetFileName(holder)} ({NameOf(holder)})" : null;
    }

    private static bool HasOpen(string process, string path)
    {
        try
        {
            return Directory.EnumerateFiles(Path.Combine(process, "fd")).Any(open => new FileInfo(open).LinkTarget == path);
        }
        catch (Exception gone) when (Disk.IsExpected(gone))
        {
            // Another user's process, or one that has ended meanwhile.
            return false;
        }
    }

    private static string NameOf(string process) => Disk.ReadText(Path.Combine(process, "comm")) is { IsGood: true } name ? name.Value.Trim() : "unknown";
}
