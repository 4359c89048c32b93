using System.Collections.Concurrent;
using System.IO.Pipes;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;

namespace Clampwise.Screens;

/// <summary>
/// Keys the moment they are pressed: waits in poll(2) (POSIX.1-2017) until the terminal has something to read. The library's own way is
/// to look every 20 ms, which costs a key 10 ms on average and the processor fifty awakenings a second.
/// </summary>
/// <param name="arrived">Told whenever something has come.</param>
internal sealed partial class TerminalInput(Action arrived) : AnsiInput, IInput<char>
{
    private const int StandardInput = 0;
    private const short Readable = 1;
    private const int Forever = -1;
    private static readonly TimeSpan s_libraryPace = TimeSpan.FromMilliseconds(20);
    private ConcurrentQueue<char>? _queue;

    /// <summary>
    /// An application of the library that reads the terminal in this way; the library's own one where there is no poll, or where the
    /// library's inside has changed.
    /// </summary>
    public static IApplication CreateApplication(Action arrived)
    {
        IApplication usual = Application.Create();
        try
        {
            return OperatingSystem.IsWindows() ? usual : (IApplication)NewApplication(new Parts(arrived));
        }
        catch (Exception changed) when (changed is MissingMethodException or TypeLoadException)
        {
            return usual;
        }
    }

    void IInput<char>.Initialize(ConcurrentQueue<char> inputQueue)
    {
        _queue = inputQueue;
        Initialize(inputQueue);
    }

    void IInput<char>.Run(CancellationToken runCancellationToken)
    {
        using var wakeReader = new AnonymousPipeServerStream(PipeDirection.In);
        using var waker = new AnonymousPipeClientStream(PipeDirection.Out, wakeReader.ClientSafePipeHandle);
        using CancellationTokenRegistration stop = runCancellationToken.Register(() => waker.WriteByte(0));
        Awaited[] both = [new(StandardInput, Readable), new((int)wakeReader.SafePipeHandle.DangerousGetHandle(), Readable)];
        while (!runCancellationToken.IsCancellationRequested)
        {
            // A terminal that has hung up stays ready with nothing to read; the signal that comes with it ends the program.
            if (Poll(both, (nuint)both.Length, Forever) > 0 && !TakeAll())
            {
                runCancellationToken.WaitHandle.WaitOne(s_libraryPace);
            }
        }
    }

    private bool TakeAll()
    {
        bool some = false;
        while (Peek())
        {
            foreach (char sign in Read())
            {
                _queue!.Enqueue(sign);
                some = true;
            }
        }

        if (some)
        {
            arrived();
        }

        return some;
    }

    // The library makes its parts itself, and lets nobody but its own tests pass in others.
    [UnsafeAccessor(UnsafeAccessorKind.Constructor)]
    [return: UnsafeAccessorType("Terminal.Gui.App.ApplicationImpl, Terminal.Gui")]
    private static extern object NewApplication(IComponentFactory parts);

    [LibraryImport("libc", EntryPoint = "poll", SetLastError = true)]
    private static partial int Poll([In, Out] Awaited[] awaited, nuint count, int milliseconds);

    private sealed class Parts(Action arrived) : AnsiComponentFactory
    {
        public override IInput<char> CreateInput() => new TerminalInput(arrived);
    }

    // struct pollfd.
    [StructLayout(LayoutKind.Sequential)]
    private struct Awaited(int file, short wanted)
    {
        public int File = file;
        public short Wanted = wanted;
        public short Happened;
    }
}
