using Clampwise.Screens;
using Clampwise.Storage;
using Microsoft.Extensions.Time.Testing;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Time;

namespace Clampwise.Tests.Screens;

/// <summary>The parts of the terminal's host that need no terminal; tests/outside/endings.sh tries the rest.</summary>
[Collection(nameof(TestTerminal))]
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
        using var shell = new Shell(Clampwise.Look.Theme.Plain, Clampwise.Look.GlyphSet.Unicode);
        new Thread(() => app.Invoke(() => app.RequestStop(shell))).Start();
        app.Run(shell);
        Assert.False(shell.IsRunning);
    }

    [Fact]
    public void A_failure_is_written_down_and_said_in_one_line()
    {
        using var folder = new ScratchFolder();
        var report = new FailureReport(new DataFolder(folder.Root), new FakeTimeProvider(new DateTimeOffset(2026, 3, 2, 18, 0, 0, TimeSpan.Zero)));
        string said = report.Write(new InvalidOperationException("made to fail"));
        Assert.Equal($"clampwise: the program failed; everything answered so far is kept. What helps to mend it stands in {report.Path}", said);
        Assert.Contains("2026-03-02 18:00:00Z", File.ReadAllText(report.Path));
        Assert.Contains("made to fail", File.ReadAllText(report.Path));
    }

    [Fact]
    public void A_failure_that_cannot_be_written_down_is_said_all_the_same()
    {
        using var folder = new ScratchFolder();
        var report = new FailureReport(new DataFolder(Path.Combine(folder.Root, "missing")), TimeProvider.System);
        Assert.EndsWith("is kept. InvalidOperationException: made to fail", report.Write(new InvalidOperationException("made to fail")), StringComparison.Ordinal);
    }
}
