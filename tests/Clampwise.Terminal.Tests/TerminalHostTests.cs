using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Time;

namespace Clampwise.Terminal.Tests;

/// <summary>The parts of the terminal's host that need no terminal; tests/outside/endings.sh tries the rest.</summary>
[Collection(nameof(NotedContent))]
public class TerminalHostTests
{
    // The library lets nobody pass in an input: a new version of it may shut the way that is used instead.
    [Fact]
    public void The_library_takes_our_input()
    {
        using IApplication? app = TerminalInput.CreateApplication(() => { }, () => { });
        app!.Init();
        Assert.IsType<TerminalInput>(((AnsiInputProcessor)app.Driver!.GetInputProcessor()).InputImpl);
    }

    [Fact]
    public void A_loop_at_rest_wakes_for_work_from_another_thread()
    {
        using var pace = new TerminalPace();
        using IApplication app = Application.Create(new SystemTimeProvider());
        app.Init("ansi");
        pace.Set(app);
        using var screen = new TerminalScreen(new NotedContent());
        new Thread(() => app.Invoke(() => app.RequestStop(screen))).Start();
        app.Run(screen);
        Assert.False(screen.IsRunning);
    }

    // xterm control sequences, OSC 52: the text in base64 (RFC 4648), so that nothing in it can end the sequence.
    [Fact]
    public void A_copied_text_goes_out_as_the_terminal_takes_it() =>
        Assert.Equal("\e]52;c;J3N0YW5kYXJkICsgMi00QDInIHgwNDYwMA==\e\\", TerminalModes.Copy("'standard + 2-4@2' x04600"));

    [Fact]
    public void The_mouse_is_left_to_the_terminal()
    {
        Assert.StartsWith("\e[?1003l", TerminalModes.Begin);
        Assert.DoesNotContain("?1003h", TerminalModes.Begin);
    }

    [Fact]
    public void Only_a_failure_in_reading_is_passed_over() =>
        Assert.False(LibraryInput.IsUnreadable(new InvalidOperationException("of the program")));
}
