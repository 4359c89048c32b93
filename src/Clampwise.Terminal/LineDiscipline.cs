using System.Runtime.InteropServices;

namespace Clampwise.Terminal;

/// <summary>How the terminal's line takes and gives characters (POSIX.1-2017, termios), kept to be set again.</summary>
internal sealed partial class LineDiscipline
{
    private const int StandardInput = 0;
    private const int Now = 0;
    private const int OwnGroup = 0;

    // struct termios takes 60 bytes on Linux and 72 on macOS; what is in it is not looked at.
    private const int Room = 256;
    private readonly byte[] _state = new byte[Room];
    private readonly bool _isKnown;

    private LineDiscipline() => _isKnown = !OperatingSystem.IsWindows() && Get(StandardInput, _state) == 0;

    /// <summary>The one that is set now.</summary>
    public static LineDiscipline Current() => new();

    /// <summary>Sets it again; nothing without a terminal.</summary>
    public void Restore()
    {
        if (_isKnown)
        {
            _ = Set(StandardInput, Now, _state);
        }
    }

    /// <summary>
    /// Stops this process and those that it was started with, as Ctrl+Z does, until the shell lets it go on; does nothing where no shell
    /// could (orphaned process groups).
    /// </summary>
    public static void StopProcess() => _ = Kill(OwnGroup, OperatingSystem.IsLinux() ? 20 : 18);

    [LibraryImport("libc", EntryPoint = "tcgetattr")]
    private static partial int Get(int file, [Out] byte[] state);

    [LibraryImport("libc", EntryPoint = "tcsetattr")]
    private static partial int Set(int file, int when, byte[] state);

    [LibraryImport("libc", EntryPoint = "kill")]
    private static partial int Kill(int process, int signal);
}
