using Terminal.Gui.App;
using Terminal.Gui.Drivers;

namespace Clampwise.Terminal;

/// <summary>
/// What the program asks of the terminal beside what the library does (xterm control sequences; kitty keyboard protocol), and how all of
/// it is taken back.
/// </summary>
internal static class TerminalModes
{
    // The program has no use for the mouse: left to the terminal, text can be selected and copied.
    private const string NoMouse = "\e[?1003l\e[?1006l\e[?1015l\e[?1000l";
    private const string GiveTitleBack = "\e[23;0t";
    private const string FocusReports = "\e[?1004h";
    private const string NoFocusReports = "\e[?1004l";
    private const string NoKittyKeys = "\e[<u";

    // The runtime sets the keypad's application mode as soon as it meets a terminal, and leaves it on (terminfo: smkx, rmkx).
    private const string UsualKeypad = "\e[?1l\e>";

    // As the library sets them when it begins, but for the mouse.
    private const string LibraryModes = "\e[?1049h\e[2J\e[1;1H\e[?25l\e[?2004h";

    /// <summary>Keeps the title that the window had, and sets our own.</summary>
    public const string OwnTitle = "\e[22;0t\e]0;Clampwise\e\\";

    /// <summary>Takes back all that anybody has set. The library's own way leaves the focus reports, the keypad and the kitty keys as they are.</summary>
    public const string Everything = NoKittyKeys + NoMouse + "\e[?2004l" + NoFocusReports + "\e[0m\e[?25h\e[?1049l" + GiveTitleBack + UsualKeypad;

    /// <summary>To be written before the screen is drawn first: a window that loses the focus says so, and the title will come back.</summary>
    public const string Begin = NoMouse + OwnTitle + FocusReports;

    /// <summary>To be written before the library takes back its own.</summary>
    public const string End = NoFocusReports + GiveTitleBack;

    /// <summary>
    /// Puts a text on the clipboard of the terminal's own machine (xterm control sequences, OSC 52). Many terminals do it only where it
    /// is allowed in their settings, and none says whether it did.
    /// </summary>
    public static string Copy(string text) => $"\e]52;c;{Convert.ToBase64String(System.Text.Encoding.UTF8.GetBytes(text))}\e\\";

    /// <summary>Takes back all that anybody has set, without the library.</summary>
    public static void TakeBackEverything() => Write(Everything);

    /// <summary>Takes back what the runtime leaves; to be written last, by the program itself.</summary>
    public static void TakeBackKeypad() => Write(UsualKeypad);

    /// <summary>
    /// Sets the modes again and draws anew, after somebody else had the terminal. Harmless where nothing was lost; for that the kitty keys
    /// are set, not pushed.
    /// </summary>
    public static void TakeAgain(IApplication app)
    {
        IDriver driver = app.Driver!;
        string kittyKeys = driver.KittyKeyboardCapabilities is { IsSupported: true, Flags: var flags } ? $"\e[={(int)flags};1u" : "";
        driver.WriteRaw(FocusReports + LibraryModes + kittyKeys);
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
