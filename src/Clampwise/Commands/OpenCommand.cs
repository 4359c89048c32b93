using Clampwise.Look;
using Clampwise.Practice;
using Clampwise.Screens;
using Clampwise.Screens.Session;
using Clampwise.Sound;
using Clampwise.Sound.Players;
using Clampwise.Storage;
using Clampwise.Theory;

namespace Clampwise.Commands;

/// <summary>The composition root of practice: opens what this machine and this player have, and the screens on it.</summary>
internal static class OpenCommand
{
    /// <summary>How long the daily drill lasts unless asked otherwise.</summary>
    public const int UsualMinutes = 15;

    private const int MostMinutes = 120;

    /// <summary>The bare command: the first screen.</summary>
    public static int Run(Surroundings around, string? dataFolder, int minutes) =>
        WithDesk(around, dataFolder, minutes, TimeSpan.Zero, (desk, notices) => Show(around, desk, notices, null));

    /// <summary>Opens the desk for as long as something is done at it.</summary>
    /// <param name="around">What lies outside the program.</param>
    /// <param name="dataFolder">The folder asked for; null for the platform's own.</param>
    /// <param name="minutes">Length of the daily drill.</param>
    /// <param name="patience">How long to wait for the sound device; the screens need not, since a notice can come later.</param>
    /// <param name="run">What is done, with what the player should be told.</param>
    public static int WithDesk(Surroundings around, string? dataFolder, int minutes, TimeSpan patience, Func<Desk, IReadOnlyList<string>, int> run)
    {
        if (minutes is < 1 or > MostMinutes)
        {
            return around.Refuse(new Fault($"--minutes: expected 1 to {MostMinutes}, found {minutes}"));
        }

        return DataCommand.WithStore(around, dataFolder, store =>
        {
            using ISoundOut sound = SoundSystem.Open(SoundSettings.Standard, patience);
            var library = DrillLibrary.Load(store.Folder);
            var settings = new DeskSettings(GlyphSet.For(around.Variable), new PracticeCalendar(around.Time.LocalTimeZone, PracticeCalendar.UsualDayStart), FsrsSettings.Usual)
            {
                SessionLength = TimeSpan.FromMinutes(minutes),
            };
            var desk = new Desk(library.Drills, store, store.LoadMemory(settings.Memory), sound, settings, around.Time, Guid.NewGuid, new Random().Next) { Folder = store.Folder };
            int code = run(desk, [.. store.Notices, .. library.Faults.Select(unread => unread.ToString())]);
            desk.Close();
            return code;
        });
    }

    /// <summary>Shows the screens, with a session in front if one is given.</summary>
    public static int Show(Surroundings around, Desk desk, IReadOnlyList<string> notices, SessionState? session)
    {
        var shell = new Shell(Theme.For(around.Variable), desk.Glyphs);
        shell.Open(new TodayPage(shell, desk, notices));
        if (session is not null)
        {
            shell.Open(new SessionPage(shell, desk, session));
        }

        TerminalHost.Run(shell);
        return ExitCode.Good;
    }
}
