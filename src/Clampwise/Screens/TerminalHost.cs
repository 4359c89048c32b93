using System.Runtime.InteropServices;
using Terminal.Gui.App;
using Terminal.Gui.Configuration;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Clampwise.Screens;

/// <summary>Runs the frame in the real terminal and leaves the terminal as it was found.</summary>
internal static class TerminalHost
{
    /// <summary>Runs until the player leaves, or a signal asks to stop.</summary>
    public static void Run(Shell shell)
    {
        using IApplication app = Application.Create();
        app.Init();
        UseOwnGround();
        using PosixSignalRegistration terminate = StopOn(PosixSignal.SIGTERM, app, shell);
        using PosixSignalRegistration hangUp = StopOn(PosixSignal.SIGHUP, app, shell);
        app.Run(shell);
    }

    /// <summary>The library's schemes paint a ground of their own; ours is the terminal's.</summary>
    internal static void UseOwnGround()
    {
        foreach (string name in SchemeManager.GetSchemeNames())
        {
            SchemeManager.AddScheme(name, new Scheme(new Attribute(Color.None, Color.None)));
        }
    }

    private static PosixSignalRegistration StopOn(PosixSignal signal, IApplication app, Shell shell) =>
        PosixSignalRegistration.Create(signal, context =>
        {
            context.Cancel = true;
            app.Invoke(shell.CloseAll);
        });
}
