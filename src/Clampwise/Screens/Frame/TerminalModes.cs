using Terminal.Gui.App;
using Terminal.Gui.Drivers;

namespace Clampwise.Screens;

/// <summary>
/// What the program asks of the terminal beside what the library does (xterm control sequences; kitty keyboard protocol), and how all of
/// it is taken back.
/// </summary>
internal static class TerminalModes
{
    private const string KeepTitle = "\e[22;0t";
    private const string Title = "\e]0;Clampwise\e\\";
    private const string GiveTitleBack = "\e[23;0t";
    private const string FocusReports = "\e[?1004h";
    private const string NoFocusReports = "\e[?1004l";
    private const string NoKittyKeys = "\e[<u";

    // The runtime sets the keypad's application mode as soon as it meets a terminal, and leaves it on (terminfo: smkx, rmkx).
    private const string UsualKeypad = "\e[?1l\e>";
    private const string Everything = NoKittyKeys + "\e[?1003l\e[?1006l\e[?1015l\e[?1000l\e[?2004l" + NoFocusReports + "\e[0m\e[?25h\e[?1049l" + GiveTitleBack + UsualKeypad;

    // As the library sets them when it begins.
    private const string LibraryModes = "\e[?1049h\e[2J\e[1;1H\e[?25l\e[?1003h\e[?1015h\e[?1006h\e[?2004h";

    /// <summary>To be written before the screen is drawn first: a window that loses the focus says so, and the title will come back.</summary>
    public const string Begin = KeepTitle + Title + FocusReports;

    /// <summary>To be written before the library takes back its own.</summary>
    public const string End = NoFocusReports + GiveTitleBack;

    /// <summary>Takes back all that anybody has set, without the library.</summary>
    public static void TakeBackEverything() => Write(Everything);

    /// <summary>Takes back what the library leaves, once it is gone.</summary>
    public static void TakeBackKeypad() => Write(UsualKeypad);

    /// <summary>
    /// Gives the terminal to the shell until the player comes back (job control). Not by the library's own way: that leaves the focus
    /// reports, the keypad and the kitty keys as they are.
    /// </summary>
    /// <param name="app">The application that draws.</param>
    /// <param name="found">The line discipline of the shell.</param>
    public static void StepAside(IApplication app, LineDiscipline found)
    {
        IDriver driver = app.Driver!;
        var ours = LineDiscipline.Current();
        driver.WriteRaw(Everything);
        found.Restore();
        LineDiscipline.StopProcess();
        ours.Restore();
        string kittyKeys = driver.KittyKeyboardCapabilities is { IsSupported: true, Flags: var flags } ? $"\e[>{(int)flags}u" : "";
        driver.WriteRaw(Begin + LibraryModes + kittyKeys);
        app.ClearScreenNextIteration = true;
    }

    private static void Write(string sequences)
    {
        try
        {
            Console.Out.Write(sequences);
            Console.Out.Flush();
        }
        catch (IOException)
        {
            // There is no terminal left to restore.
        }
    }
}
