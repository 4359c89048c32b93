using Clampwise.Application;
using Clampwise.Screens;
using Clampwise.Settings;
using Clampwise.Storage;
using Clampwise.Terminal;

namespace Clampwise.Commands;

/// <summary>The composition root of practice: opens what this machine and this player have, and the screens on it.</summary>
internal static class OpenCommand
{
    /// <summary>The longest daily drill, in minutes.</summary>
    public const int MostMinutes = 120;

    /// <summary>The bare command: the first screen.</summary>
    public static int Run(Surroundings around, string? dataFolder, int? minutes) =>
        // The device opens while the first screen is drawn; a notice comes later if it fails.
        WithDesk(around, dataFolder, minutes, TimeSpan.Zero, (_, screens) => screens(null));

    // Who has answers on record has no need of it, unless it was asked for.
    private static bool ShowsWelcome(SettingsKeeper settings, int answers) =>
        settings.Now.ShowsWelcome && (answers == 0 || settings.File.Names("screen.welcome"));

    /// <summary>Opens the desk for as long as something is done at it.</summary>
    /// <param name="around">What lies outside the program.</param>
    /// <param name="dataFolder">The folder asked for; null for the platform's own.</param>
    /// <param name="minutes">Length of the daily drill; null for what is set.</param>
    /// <param name="patience">How long to wait for the sound device.</param>
    /// <param name="run">What is done: given the desk, and what shows the screens with or without another page in front of the first.</param>
    public static int WithDesk(Surroundings around, string? dataFolder, int? minutes, TimeSpan patience, Func<ScreenDesk, Func<Func<Frame, Page>?, int>, int> run)
    {
        // The drills that came with the program are read while the store opens.
        _ = Task.Run(() => DrillLibrary.Shipped);
        return DataCommand.WithStore(around, dataFolder, store =>
        {
            var settings = new SettingsKeeper(SettingsFile.In(store.Folder));
            TimeSpan? given = minutes is { } number ? TimeSpan.FromMinutes(number) : null;
            var library = DrillLibrary.Load(store.Folder);
            PlayerSettings inForce = SettingsInForce.With(settings.Now, given);
            var desk = new ScreenDesk(
                new PlayerRecord(store, store.LoadMemory(inForce.Memory)),
                new DrillShelf(library.Drills, store.Folder),
                new SoundInUse(around.OpenSound(inForce.Sound, patience)),
                new Circumstances(around.Time, Guid.NewGuid, new Random().Next),
                inForce,
                inForce.GlyphsFor(around.Variable));
            int before = desk.Record.Memory.AttemptCount;
            try
            {
                return run(desk, front =>
                {
                    var frame = new Frame(settings.Now.ThemeFor(around.Variable), desk.Glyphs);
                    var changes = new SettingsInForce(frame, desk, settings, around, given, store.LoadMemory);
                    desk.Sessions.TakeUpKept();
                    frame.Open(new TodayPage(frame, desk, settings, changes.Settle, () => [.. store.Notices, .. library.Faults.Select(unread => unread.ToString())]));
                    if (front is not null)
                    {
                        frame.Open(front(frame));
                    }
                    else if (ShowsWelcome(settings, before))
                    {
                        frame.Open(new WelcomePage(frame, desk, settings));
                    }

                    int ending = TerminalHost.Run(frame, new FailureReport(store.Folder, around.Time).Write);
                    return desk.Sessions.Close() is { } unkept ? around.Fail(unkept) : ending;
                });
            }
            finally
            {
                // Not the one it began with, if the player has chosen another.
                desk.Sound.Dispose();
                MemoryCommand.FitIfDue(around, store, before, desk.Record.Memory.AttemptCount);
            }
        });
    }
}
