using System.Runtime.InteropServices;

namespace Clampwise.Terminal;

/// <summary>What ended a wait for input.</summary>
[Flags]
internal enum InputEvent
{
    /// <summary>Nothing that is known: a signal, or the end of the patience.</summary>
    None = 0,

    /// <summary>There is something to read.</summary>
    Readable = 1,

    /// <summary>The terminal has hung up.</summary>
    HungUp = 2,
}

/// <summary>
/// Waits until standard input has something to read: by poll(2) (POSIX.1-2017); on macOS, where poll does not work on terminals, by
/// select(2), which does not tell a terminal that has hung up from one with something to read: reading tells.
/// </summary>
internal static partial class InputWait
{
    /// <summary>No end of patience.</summary>
    public const int Forever = -1;

    private const int StandardInput = 0;

    // POLLIN; POLLERR, POLLHUP and POLLNVAL together.
    private const short Readable = 0x01;
    private const short HungUp = 0x08 | 0x10 | 0x20;

    // FD_SETSIZE on macOS is 1024: 32 words of 32 bits.
    private const int SetWords = 32;
    private const int MicrosecondsAMillisecond = 1000;

    /// <summary>True where there is a way to wait: everywhere but on Windows.</summary>
    public static bool IsThere => !OperatingSystem.IsWindows();

    /// <summary>Waits for input, or until another descriptor can be read.</summary>
    /// <param name="other">A descriptor that ends the wait; null for none.</param>
    /// <param name="milliseconds">The patience; <see cref="Forever"/> for no end of it.</param>
    public static InputEvent For(int? other, int milliseconds) => OperatingSystem.IsMacOS() ? BySelect(other, milliseconds) : ByPoll(other, milliseconds);

    private static InputEvent ByPoll(int? other, int milliseconds)
    {
        Awaited[] awaited = other is { } second ? [new(StandardInput, Readable), new(second, Readable)] : [new(StandardInput, Readable)];
        if (Poll(awaited, (nuint)awaited.Length, milliseconds) <= 0)
        {
            return InputEvent.None;
        }

        return ((awaited[0].Happened & Readable) != 0 ? InputEvent.Readable : InputEvent.None)
            | ((awaited[0].Happened & HungUp) != 0 ? InputEvent.HungUp : InputEvent.None);
    }

    // Written from the system's documentation, and never run on a Mac.
    private static InputEvent BySelect(int? other, int milliseconds)
    {
        int[] set = new int[SetWords];
        Add(set, StandardInput);
        Add(set, other ?? StandardInput);
        long[]? patience = milliseconds == Forever ? null : [0, milliseconds * MicrosecondsAMillisecond];
        return Select(Math.Max(StandardInput, other ?? 0) + 1, set, IntPtr.Zero, IntPtr.Zero, patience) > 0 && (set[0] & 1) != 0 ? InputEvent.Readable : InputEvent.None;
    }

    private static void Add(int[] set, int file) => set[file / 32] |= 1 << (file % 32);

    [LibraryImport("libc", EntryPoint = "poll", SetLastError = true)]
    private static partial int Poll([In, Out] Awaited[] awaited, nuint count, int milliseconds);

    // struct timeval is two numbers of eight bytes, the second filled up.
    [LibraryImport("libc", EntryPoint = "select", SetLastError = true)]
    private static partial int Select(int count, [In, Out] int[] read, IntPtr write, IntPtr except, long[]? patience);

    // struct pollfd.
    [StructLayout(LayoutKind.Sequential)]
    private struct Awaited(int file, short wanted)
    {
        public int File = file;
        public short Wanted = wanted;
        public short Happened;
    }
}
