using BenchmarkDotNet.Attributes;
using Clampwise.Application;
using Clampwise.Charts;
using Clampwise.Look;
using Clampwise.Practice;
using Clampwise.Screens;
using Clampwise.Settings;
using Clampwise.Sound.Players;
using Clampwise.Storage;
using Clampwise.Terminal;
using Clampwise.Theory;
using Terminal.Gui.App;
using Terminal.Gui.Time;

namespace Clampwise.Benchmarks;

/// <summary>From an empty log to the first screen composed and drawn, in a terminal in memory.</summary>
[MemoryDiagnoser]
public class FirstScreenBenchmarks
{
    [GlobalSetup]
    public void Prepare() => Environment.SetEnvironmentVariable("DisableRealDriverIO", "1");

    [Benchmark]
    public string FirstScreen()
    {
        var desk = new ScreenDesk(
            new PlayerRecord(new NoLog(), MemoryState.Empty(FsrsSettings.Usual)),
            new DrillShelf(DrillLibrary.Shipped.Drills),
            new SoundInUse(new CapturedOut()),
            new Circumstances(TimeProvider.System, () => Guid.Empty, () => 7),
            PlayerSettings.Usual,
            GlyphSet.Unicode);
        var frame = new Frame(Theme.Own, GlyphSet.Unicode);
        frame.Open(new TodayPage(frame, desk, new SettingsKeeper(new SettingsFile("there-is-none.toml")), () => { }, () => []));
        using var screen = new TerminalScreen(frame);
        using IApplication app = global::Terminal.Gui.App.Application.Create(new VirtualTimeProvider());
        app.Init("ansi");
        app.Driver!.SetScreenSize(80, 24);
        SessionToken session = app.Begin(screen)!;
        app.LayoutAndDraw();
        string drawn = app.Driver.ToString()!;
        app.End(session);
        return drawn;
    }

    private sealed class NoLog : IAttemptLog
    {
        public Fault? Append(LogEntry entry) => null;

        public IReadOnlyList<LogEntry> ReadAll() => [];
    }
}
