using System.Runtime.InteropServices;
using Clampwise.Theory;
using Terminal.Gui.App;
using Terminal.Gui.Configuration;
using Terminal.Gui.Drawing;
using Terminal.Gui.Drivers;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Clampwise.Terminal;

/// <summary>Runs the frame in the real terminal and leaves the terminal as it was found, however the program ends.</summary>
public sealed class TerminalHost : IDisposable
{
    private const int Good = 0;
    private const int Failed = 1;
    private const int SignalExit = 128;
    private const int HangUp = 1;
    private static readonly TimeSpan s_patience = TimeSpan.FromSeconds(1);

    // The numbers are those of POSIX.1-2017, kill.
    private static readonly (PosixSignal Signal, int Number)[] s_stopping =
        [(PosixSignal.SIGHUP, HangUp), (PosixSignal.SIGINT, 2), (PosixSignal.SIGQUIT, 3), (PosixSignal.SIGTERM, 15)];

    // Heard to the end of the process: a shell that goes away hangs up more than once, and the data is still to be closed.
    private static readonly List<PosixSignalRegistration> s_signals = [];

    private readonly LineDiscipline _found = LineDiscipline.Current();
    private readonly IScreenContent _content;
    private readonly TerminalScreen _screen;
    private readonly Func<Exception, string> _report;
    private readonly TerminalPace _pace = new();
    private readonly ManualResetEventSlim _ended = new();
    private readonly IApplication _app;
    private readonly LibraryInput? _library;
    private JobControl? _jobs;
    private volatile int _exitCode = Good;

    // The signals are heard before the terminal is touched: one that comes while it is being set up must leave it as it was too.
    private TerminalHost(IScreenContent content, Func<Exception, string> report, bool readsItself)
    {
        _content = content;
        _screen = new TerminalScreen(content);
        _report = report;
        AppDomain.CurrentDomain.UnhandledException += OnUnhandled;
        IApplication? own = readsItself ? TerminalInput.CreateApplication(_pace.Wake, HangUpLater) : null;
        _app = own ?? Application.Create();
        _library = own is null ? new LibraryInput(_pace.Wake, HangUpLater) : null;
        s_signals.AddRange(s_stopping.Select(stopping => PosixSignalRegistration.Create(stopping.Signal, context =>
        {
            context.Cancel = true;
            Stop(stopping.Number);
        })));
    }

    /// <summary>Runs until the player leaves, a signal asks to stop, the terminal hangs up, or the program fails.</summary>
    /// <param name="content">What is shown.</param>
    /// <param name="report">Writes a failure of the program down, and gives the one line that the player sees of it.</param>
    /// <param name="readsItself">False to let the library read the terminal, as where its inside has changed.</param>
    /// <returns>The exit code of the process: that of a shell after a signal, 1 after a failure, else 0.</returns>
    public static int Run(IScreenContent content, Func<Exception, string> report, bool readsItself = true)
    {
        try
        {
            using var host = new TerminalHost(content, report, readsItself);
            host.Begin();
            if (host._exitCode == Good)
            {
                host._app.Run(host._screen, host._library is null ? null : LibraryInput.IsUnreadable);
            }
            else
            {
                content.CloseAll();
            }

            return host._exitCode;
        }
        catch (Exception failure)
        {
            Console.Error.WriteLine(VisibleText.Of(report(failure)));
            return Failed;
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _app.Driver?.WriteRaw(TerminalModes.End);

        _library?.Dispose();
        _pace.Dispose();
        _app.Dispose();
        _jobs?.Dispose();
        _screen.Dispose();
        _ended.Set();
        AppDomain.CurrentDomain.UnhandledException -= OnUnhandled;
    }

    /// <summary>Takes back what the runtime leaves in a terminal; to be called last, by the program itself.</summary>
    public static void TakeBackKeypad() => TerminalModes.TakeBackKeypad();

    /// <summary>The library's schemes paint a ground of their own; ours is the terminal's.</summary>
    internal static void UseOwnGround()
    {
        foreach (string name in SchemeManager.GetSchemeNames())
        {
            SchemeManager.AddScheme(name, new Scheme(new Attribute(Color.None, Color.None)));
        }
    }

    private void Begin()
    {
        // The size is asked of the system, at once and for nothing; by default the terminal is asked for it twice a second.
        Driver.SizeDetection = SizeDetectionMode.Polling;
        _app.Init();
        _pace.Set(_app, isBlind: _library is not null && !InputWait.IsThere);
        UseOwnGround();
        _screen.UseColours(_app.Driver);
        ReportFocus();
        _app.Driver!.WriteRaw(TerminalModes.Begin);
        _jobs = OperatingSystem.IsWindows() ? null : new JobControl(_app, _found, _content.Attend);
    }

    /// <summary>Does something on the thread of the screen; nothing before that has begun or after it has ended.</summary>
    internal static void Post(IApplication app, Action action)
    {
        try
        {
            app.Invoke(action);
        }
        catch (NotInitializedException)
        {
            // Run looks whether it was asked to stop in the meantime.
        }
    }

    private void HangUpLater() => ThreadPool.QueueUserWorkItem(_ => Stop(HangUp));

    // The terminal tells when its window gains (CSI I) or loses (CSI O) the focus, if asked to (xterm control sequences, FocusIn and
    // FocusOut). The library has no event for it, but hands over sequences that somebody expects.
    private void ReportFocus()
    {
        IAnsiResponseParser parser = _app.Driver!.GetInputProcessor().GetParser();
        parser.ExpectResponse("[I", null, _ => _screen.Post(() => _content.Attend(true)), null, persistent: true);
        parser.ExpectResponse("[O", null, _ => _screen.Post(() => _content.Attend(false)), null, persistent: true);
        if (_library is not null)
        {
            LibraryInput.Teach(parser, key => _screen.Post(() => _content.Press(key)));
        }
    }

    // Should the library's loop not come round again, the process ends all the same. What was answered is on the disk already.
    private void Stop(int number)
    {
        _exitCode = SignalExit + number;
        Post(_app, _content.CloseAll);
        if (!_ended.Wait(s_patience))
        {
            _found.Restore();
            TerminalModes.TakeBackEverything();
            Environment.Exit(_exitCode);
        }
    }

    // On a thread that is not the screen's.
    private void OnUnhandled(object sender, UnhandledExceptionEventArgs e)
    {
        _pace.Halt(s_patience);
        _found.Restore();
        TerminalModes.TakeBackEverything();
        Console.Error.WriteLine(VisibleText.Of(_report((Exception)e.ExceptionObject)));
        Environment.Exit(Failed);
    }
}
