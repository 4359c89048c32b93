using System.Runtime.InteropServices;
using Terminal.Gui.App;
using Terminal.Gui.Configuration;
using Terminal.Gui.Drawing;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Clampwise.Screens;

/// <summary>Runs the frame in the real terminal and leaves the terminal as it was found, however the program ends.</summary>
internal sealed class TerminalHost : IDisposable
{
    private const int SignalExit = 128;
    private static readonly TimeSpan s_patience = TimeSpan.FromSeconds(1);

    // The numbers are those of POSIX.1-2017, kill.
    private static readonly (PosixSignal Signal, int Number)[] s_stopping =
        [(PosixSignal.SIGHUP, 1), (PosixSignal.SIGINT, 2), (PosixSignal.SIGQUIT, 3), (PosixSignal.SIGTERM, 15)];

    private readonly LineDiscipline _found = LineDiscipline.Current();
    private readonly Shell _shell;
    private readonly FailureReport _report;
    private readonly TerminalPace _pace = new();
    private readonly ManualResetEventSlim _ended = new();
    private readonly List<PosixSignalRegistration> _signals = [];
    private readonly IApplication _app;
    private int _exitCode = ExitCode.Good;

    private TerminalHost(Shell shell, FailureReport report)
    {
        _shell = shell;
        _report = report;
        AppDomain.CurrentDomain.UnhandledException += OnUnhandled;
        // The size is asked of the system, at once and for nothing; by default the terminal is asked for it twice a second.
        Driver.SizeDetection = SizeDetectionMode.Polling;
        _app = TerminalInput.CreateApplication(_pace.Wake);
        _app.Init();
        _pace.Set(_app);
        UseOwnGround();
        shell.UseColours(_app.Driver);
        _signals.AddRange(s_stopping.Select(stopping => PosixSignalRegistration.Create(stopping.Signal, context => Stop(context, stopping.Number))));
        ReportFocus();
        _app.Keyboard.KeyDown += OnKeyDown;
        _app.Driver!.WriteRaw(TerminalModes.Begin);
    }

    /// <summary>Runs until the player leaves, a signal asks to stop, or the program fails.</summary>
    /// <returns>The exit code of the process: that of a shell after a signal, 1 after a failure, else 0.</returns>
    public static int Run(Shell shell, FailureReport report)
    {
        try
        {
            using var host = new TerminalHost(shell, report);
            host._app.Run(shell);
            return host._exitCode;
        }
        catch (Exception failure)
        {
            Console.Error.WriteLine(report.Write(failure));
            return ExitCode.Trouble;
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _app.Keyboard.KeyDown -= OnKeyDown;
        _app.Driver?.WriteRaw(TerminalModes.End);
        _pace.Dispose();
        // Without a terminal the library does not come back from here either, so the signals are heard until it has.
        _app.Dispose();
        TerminalModes.TakeBackKeypad();
        _ended.Set();
        _signals.ForEach(signal => signal.Dispose());
        AppDomain.CurrentDomain.UnhandledException -= OnUnhandled;
    }

    /// <summary>The library's schemes paint a ground of their own; ours is the terminal's.</summary>
    internal static void UseOwnGround()
    {
        foreach (string name in SchemeManager.GetSchemeNames())
        {
            SchemeManager.AddScheme(name, new Scheme(new Attribute(Color.None, Color.None)));
        }
    }

    // The terminal tells when its window gains (CSI I) or loses (CSI O) the focus, if asked to (xterm control sequences, FocusIn and
    // FocusOut). The library has no event for it, but hands over sequences that somebody expects.
    private void ReportFocus()
    {
        IAnsiResponseParser parser = _app.Driver!.GetInputProcessor().GetParser();
        parser.ExpectResponse("[I", null, _ => _shell.Post(() => _shell.Attend(true)), null, persistent: true);
        parser.ExpectResponse("[O", null, _ => _shell.Post(() => _shell.Attend(false)), null, persistent: true);
    }

    // Time in the shell is no thinking.
    private void OnKeyDown(object? sender, Key key)
    {
        if (key == Key.Z.WithCtrl && !OperatingSystem.IsWindows())
        {
            key.Handled = true;
            _shell.Attend(false);
            TerminalModes.StepAside(_app, _found);
            _shell.Attend(true);
        }
    }

    // With the terminal gone the library's loop may never come round again: then the process ends all the same. What was answered is on
    // the disk already.
    private void Stop(PosixSignalContext context, int number)
    {
        context.Cancel = true;
        _exitCode = SignalExit + number;
        _app.Invoke(_shell.CloseAll);
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
        Console.Error.WriteLine(_report.Write((Exception)e.ExceptionObject));
        Environment.Exit(ExitCode.Trouble);
    }
}
