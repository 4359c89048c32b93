using System.Diagnostics;
using System.Runtime.InteropServices;
using Terminal.Gui.App;
using Terminal.Gui.Configuration;
using Terminal.Gui.Drawing;
using Terminal.Gui.Drivers;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Clampwise.Screens;

/// <summary>Runs the frame in the real terminal and leaves the terminal as it was found.</summary>
internal static class TerminalHost
{
    // Leaves the alternate screen; gives back cursor, colours, mouse, paste and key modes (xterm control sequences; kitty keyboard protocol).
    private const string Restoring = "\e[<u\e[?1003l\e[?1006l\e[?1015l\e[?1000l\e[?2004l\e[?1004l\e[0m\e[?25h\e[?1049l";
    private const string FocusReportsOn = "\e[?1004h";
    private const string FocusReportsOff = "\e[?1004l";
    private const int SignalExit = 128;
    private static readonly TimeSpan s_patience = TimeSpan.FromSeconds(1);

    /// <summary>Runs until the player leaves, or a signal asks to stop.</summary>
    public static void Run(Shell shell)
    {
        using var ended = new ManualResetEventSlim();
        AppDomain.CurrentDomain.UnhandledException += OnUnhandled;
        IApplication app = Application.Create();
        app.Init();
        UseOwnGround();
        shell.UseColours(app.Driver);
        using PosixSignalRegistration terminate = StopOn(PosixSignal.SIGTERM, 15, app, shell, ended);
        using PosixSignalRegistration hangUp = StopOn(PosixSignal.SIGHUP, 1, app, shell, ended);
        ReportFocus(app, shell);
        try
        {
            app.Run(shell);
        }
        finally
        {
            app.Driver?.WriteRaw(FocusReportsOff);
            // Without a terminal the library does not come back from here either, so the signals are heard until it has.
            app.Dispose();
            ended.Set();
            AppDomain.CurrentDomain.UnhandledException -= OnUnhandled;
        }
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
    private static void ReportFocus(IApplication app, Shell shell)
    {
        IAnsiResponseParser parser = app.Driver!.GetInputProcessor().GetParser();
        parser.ExpectResponse("[I", null, _ => shell.Post(() => shell.Attend(true)), null, persistent: true);
        parser.ExpectResponse("[O", null, _ => shell.Post(() => shell.Attend(false)), null, persistent: true);
        app.Driver.WriteRaw(FocusReportsOn);
    }

    // With the terminal gone the library's loop may never come round again: then the process ends all the same. What was answered is on
    // the disk already.
    private static PosixSignalRegistration StopOn(PosixSignal signal, int number, IApplication app, Shell shell, ManualResetEventSlim ended) =>
        PosixSignalRegistration.Create(signal, context =>
        {
            context.Cancel = true;
            app.Invoke(shell.CloseAll);
            if (!ended.Wait(s_patience))
            {
                RestoreTerminal();
                Environment.Exit(SignalExit + number);
            }
        });

    private static void OnUnhandled(object sender, UnhandledExceptionEventArgs e)
    {
        RestoreTerminal();
        Console.Error.WriteLine("clampwise: the program failed; everything answered so far is kept. What follows helps to mend it:");
    }

    private static void RestoreTerminal()
    {
        try
        {
            Console.Out.Write(Restoring);
            Console.Out.Flush();
            if (!OperatingSystem.IsWindows())
            {
                using var stty = Process.Start(new ProcessStartInfo("stty", "sane") { UseShellExecute = false, RedirectStandardError = true });
                stty?.WaitForExit(s_patience);
            }
        }
        catch (Exception gone) when (gone is IOException or System.ComponentModel.Win32Exception)
        {
            // There is no terminal left to restore.
        }
    }
}
