using System.Globalization;

namespace Clampwise.Storage;

/// <summary>Something that stays the same from one start of the computer to the next start, and differs after it.</summary>
internal static class BootMark
{
    private const string LinuxBootId = "/proc/sys/kernel/random/boot_id";

    /// <summary>
    /// The mark. Outside Linux it is the time of the start to ten minutes: if the clock is set in between it differs without need, and
    /// all that follows is that a database is rebuilt.
    /// </summary>
    public static string Read(TimeProvider time)
    {
        try
        {
            if (File.Exists(LinuxBootId))
            {
                return File.ReadAllText(LinuxBootId).Trim();
            }
        }
        catch (Exception exception) when (Disk.IsExpected(exception))
        {
        }

        TimeSpan started = time.GetUtcNow() - DateTimeOffset.UnixEpoch - TimeSpan.FromMilliseconds(Environment.TickCount64);
        return Math.Round(started.TotalMinutes / 10).ToString(CultureInfo.InvariantCulture);
    }
}
