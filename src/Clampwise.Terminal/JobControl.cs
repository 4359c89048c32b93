using System.Runtime.InteropServices;
using System.Runtime.Versioning;
using Terminal.Gui.App;
using Terminal.Gui.Input;

namespace Clampwise.Terminal;

/// <summary>Gives the terminal to the shell and takes it again (POSIX.1-2017, job control).</summary>
internal sealed class JobControl : IDisposable
{
    private readonly IApplication _app;
    private readonly LineDiscipline _found;
    private readonly LineDiscipline _ours = LineDiscipline.Current();
    private readonly Action<bool> _attend;
    private readonly PosixSignalRegistration _continued;
    private PosixSignalRegistration _stopAsked;

    /// <summary>Hears Ctrl+Z and the signals of job control.</summary>
    /// <param name="app">The application that draws; it has begun.</param>
    /// <param name="found">The line discipline of the shell.</param>
    /// <param name="attend">Told when the player goes (false) and comes back (true).</param>
    [UnsupportedOSPlatform("windows")]
    public JobControl(IApplication app, LineDiscipline found, Action<bool> attend)
    {
        _app = app;
        _found = found;
        _attend = attend;
        app.Keyboard.KeyDown += OnKeyDown;
        _stopAsked = HearStop();
        // Cancelled, or the runtime would set the line discipline to what it takes for the right one, whenever it comes to it.
        _continued = PosixSignalRegistration.Create(PosixSignal.SIGCONT, context =>
        {
            context.Cancel = true;
            TerminalHost.Post(_app, TakeAgain);
        });
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _stopAsked.Dispose();
        _continued.Dispose();
    }

    [UnsupportedOSPlatform("windows")]
    private void OnKeyDown(object? sender, Key key)
    {
        if (key == Key.Z.WithCtrl)
        {
            key.Handled = true;
            StepAside();
        }
    }

    // Time in the shell is no thinking.
    [UnsupportedOSPlatform("windows")]
    private void StepAside()
    {
        _attend(false);
        _app.Driver!.WriteRaw(TerminalModes.Everything);
        _found.Restore();
        // Unheard, the signal stops the process, but only where a shell can let it go on.
        _stopAsked.Dispose();
        LineDiscipline.StopProcess();
        _stopAsked = HearStop();
        _app.Driver!.WriteRaw(TerminalModes.OwnTitle);
        TakeAgain();
        _attend(true);
    }

    [UnsupportedOSPlatform("windows")]
    private PosixSignalRegistration HearStop() => PosixSignalRegistration.Create(PosixSignal.SIGTSTP, context =>
    {
        context.Cancel = true;
        TerminalHost.Post(_app, StepAside);
    });

    // Also after a stop that nobody could hear (SIGSTOP), when the shell has drawn over the screen.
    private void TakeAgain()
    {
        _ours.Restore();
        TerminalModes.TakeAgain(_app);
    }
}
