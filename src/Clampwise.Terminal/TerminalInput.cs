using System.Collections.Concurrent;
using System.IO.Pipes;
using System.Runtime.CompilerServices;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Time;

namespace Clampwise.Terminal;

/// <summary>
/// Keys the moment they are pressed: waits until the terminal has something to read (<see cref="InputWait"/>). The library's own way is
/// to look every 20 ms, which costs a key 10 ms on average and the processor fifty awakenings a second.
/// </summary>
/// <param name="arrived">Told whenever something has come.</param>
/// <param name="gone">Told once when the terminal has hung up: nothing will come any more.</param>
internal sealed class TerminalInput(Action arrived, Action gone) : AnsiInput, IInput<char>
{
    private static readonly TimeSpan s_libraryPace = TimeSpan.FromMilliseconds(20);
    private ConcurrentQueue<char>? _queue;

    /// <summary>An application of the library that reads the terminal in this way; null where the library's inside has changed.</summary>
    public static IApplication? CreateApplication(Action arrived, Action gone)
    {
        try
        {
            return (IApplication)NewApplication(new Parts(arrived, gone));
        }
        catch (Exception changed) when (changed is MissingMethodException or TypeLoadException)
        {
            return null;
        }
    }

    void IInput<char>.Initialize(ConcurrentQueue<char> inputQueue)
    {
        _queue = inputQueue;
        Initialize(inputQueue);
    }

    void IInput<char>.Run(CancellationToken runCancellationToken)
    {
        if (InputWait.IsThere)
        {
            Await(runCancellationToken);
        }
        else
        {
            Look(runCancellationToken);
        }
    }

    // Where there is no way to wait.
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
        int wake = (int)wakeReader.SafePipeHandle.DangerousGetHandle();
        while (!stop.IsCancellationRequested)
        {
            InputEvent happened = InputWait.For(wake, InputWait.Forever);
            if (happened == InputEvent.None || TakeAll())
            {
                continue;
            }

            if (happened.HasFlag(InputEvent.HungUp))
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

    private sealed class Parts(Action arrived, Action gone) : AnsiComponentFactory
    {
        public override IInput<char> CreateInput() => new TerminalInput(arrived, gone);

        public override IInputProcessor CreateInputProcessor(ConcurrentQueue<char> inputBuffer, ITimeProvider? timeProvider = null) =>
            new TerminalSequences(inputBuffer, timeProvider);
    }
}
