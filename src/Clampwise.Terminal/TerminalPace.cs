using System.Runtime.InteropServices;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;

namespace Clampwise.Terminal;

/// <summary>
/// Makes the library's loop wait until there is something to do: a key, a timer that is due, work from another thread, a new size of
/// the terminal. The library's own pace is 25 rounds a second, always: up to 40 ms for a key, and never quite at rest.
/// </summary>
internal sealed class TerminalPace : IDisposable
{
    // While the terminal's answer or a key with an escape sequence is half read: Esc alone is known by what does not follow it.
    private static readonly TimeSpan s_halfRead = TimeSpan.FromMilliseconds(10);
    private readonly AutoResetEvent _something = new(initialState: true);
    private PosixSignalRegistration? _newSize;
    private IApplication? _app;
    private readonly ManualResetEventSlim _halted = new();
    private volatile bool _isHalted;
    private bool _mustDraw;
    private bool _isBlind;

    /// <summary>There is something to do: from any thread.</summary>
    public void Wake() => _something.Set();

    /// <summary>Sets the pace of an application that has begun.</summary>
    /// <param name="app">The application.</param>
    /// <param name="isBlind">True if nobody tells when a key has come, so that it must be looked for.</param>
    public void Set(IApplication app, bool isBlind = false)
    {
        _isBlind = isBlind;
        _app = app;
        Application.MaximumIterationsPerSecond = ushort.MaxValue;
        app.TimedEvents!.Added += OnAdded;
        app.Iteration += OnIteration;
        if (!OperatingSystem.IsWindows())
        {
            _newSize = PosixSignalRegistration.Create(PosixSignal.SIGWINCH, _ => Wake());
        }
    }

    /// <summary>Lets the loop draw no more, from another thread; waits for the end of its round, but not for ever.</summary>
    public void Halt(TimeSpan patience)
    {
        _isHalted = true;
        Wake();
        _halted.Wait(patience);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _newSize?.Dispose();
        if (_app is not null)
        {
            _app.Iteration -= OnIteration;
            _app.TimedEvents!.Added -= OnAdded;
        }
    }

    // Within a round the patience is reckoned afterwards.
    private void OnAdded(object? sender, TimeoutEventArgs e)
    {
        if (Environment.CurrentManagedThreadId != _app!.MainThreadId)
        {
            Wake();
        }
    }

    // A round handles keys, draws, then runs timers: what these change is drawn in a second round.
    private void OnIteration(object? sender, EventArgs<IApplication?> e)
    {
        if (_isHalted)
        {
            _halted.Set();
            System.Threading.Thread.CurrentThread.Join();
        }

        // The program shows no cursor, and need not send it away in every round.
        _app!.Driver?.SetCursorNeedsUpdate(false);
        if (_mustDraw)
        {
            _mustDraw = false;
            return;
        }

        _something.WaitOne(Patience());
        _mustDraw = true;
    }

    private TimeSpan Patience()
    {
        TimeSpan untilTimer = _app!.TimedEvents is TimedEvents timers && timers.CheckTimers(out int milliseconds)
            ? TimeSpan.FromMilliseconds(milliseconds + 1)
            : System.Threading.Timeout.InfiniteTimeSpan;
        bool isHalfRead = _app.Driver?.GetInputProcessor().GetParser().State is not (null or AnsiResponseParserState.Normal);
        return (isHalfRead || _isBlind) && (untilTimer > s_halfRead || untilTimer == System.Threading.Timeout.InfiniteTimeSpan) ? s_halfRead : untilTimer;
    }
}
