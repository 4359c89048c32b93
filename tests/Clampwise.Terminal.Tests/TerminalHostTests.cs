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
        using IApplication app = TerminalInput.CreateApplication(() => { }, () => { });
        app.Init();
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
}
