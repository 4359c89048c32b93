using System.Collections.Concurrent;
using System.IO.Pipes;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Time;

namespace Clampwise.Terminal;

/// <summary>
/// Keys the moment they are pressed: waits in poll(2) (POSIX.1-2017) until the terminal has something to read. The library's own way is
/// to look every 20 ms, which costs a key 10 ms on average and the processor fifty awakenings a second.
/// </summary>
/// <param name="arrived">Told whenever something has come.</param>
/// <param name="gone">Told once when the terminal has hung up: nothing will come any more.</param>
internal sealed partial class TerminalInput(Action arrived, Action gone) : AnsiInput, IInput<char>
{
    private const int StandardInput = 0;

    // POLLIN; POLLERR, POLLHUP and POLLNVAL together.
    private const short Readable = 0x01;
    private const short HungUp = 0x08 | 0x10 | 0x20;
    private const int Forever = -1;
    private static readonly TimeSpan s_libraryPace = TimeSpan.FromMilliseconds(20);
    private ConcurrentQueue<char>? _queue;

    /// <summary>
    /// An application of the library that reads the terminal in this way; the library's own one where the library's inside has changed.
    /// </summary>
    public static IApplication CreateApplication(Action arrived, Action gone)
    {
        IApplication usual = Application.Create();
        try
        {
            return (IApplication)NewApplication(new Parts(arrived, gone));
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
        if (OperatingSystem.IsWindows())
        {
            Look(runCancellationToken);
        }
        else
        {
            Await(runCancellationToken);
        }
    }

    // Where there is no poll.
    private void Look(CancellationToken stop)
    {
        do
        {
            TakeAll();
        }
        while (!stop.WaitHandle.WaitOne(s_libraryPace));
    }

    private void Await(CancellationToken stop)
    {
        using var wakeReader = new AnonymousPipeServerStream(PipeDirection.In);
        using var waker = new AnonymousPipeClientStream(PipeDirection.Out, wakeReader.ClientSafePipeHandle);
        using CancellationTokenRegistration stopping = stop.Register(() => waker.WriteByte(0));
        Awaited[] both = [new(StandardInput, Readable), new((int)wakeReader.SafePipeHandle.DangerousGetHandle(), Readable)];
        while (!stop.IsCancellationRequested)
        {
            if (Poll(both, (nuint)both.Length, Forever) <= 0 || TakeAll())
            {
                continue;
            }

            if ((both[0].Happened & HungUp) != 0)
            {
                gone();
                stop.WaitHandle.WaitOne();
            }
            else
            {
                // Ready, and yet nothing to read: in the background, say.
                stop.WaitHandle.WaitOne(s_libraryPace);
            }
        }
    }

    // A terminal that has hung up stays ready with nothing to read.
    private bool TakeAll()
    {
        bool some = false;
        while (Peek() && TakeSome())
        {
            some = true;
        }

        if (some)
        {
            arrived();
        }

        return some;
    }

    private bool TakeSome()
    {
        bool some = false;
        foreach (char sign in Read())
        {
            _queue!.Enqueue(sign);
            some = true;
        }

        return some;
    }

    // The library makes its parts itself, and lets nobody but its own tests pass in others.
    [UnsafeAccessor(UnsafeAccessorKind.Constructor)]
    [return: UnsafeAccessorType("Terminal.Gui.App.ApplicationImpl, Terminal.Gui")]
    private static extern object NewApplication(IComponentFactory parts);

    [LibraryImport("libc", EntryPoint = "poll", SetLastError = true)]
    private static partial int Poll([In, Out] Awaited[] awaited, nuint count, int milliseconds);

    private sealed class Parts(Action arrived, Action gone) : AnsiComponentFactory
    {
        public override IInput<char> CreateInput() => new TerminalInput(arrived, gone);

        public override IInputProcessor CreateInputProcessor(ConcurrentQueue<char> inputBuffer, ITimeProvider? timeProvider = null) =>
            new TerminalSequences(inputBuffer, timeProvider);
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
