using Clampwise.Look;
using Clampwise.Practice;
using Clampwise.Screens;
using Clampwise.Sound;
using Clampwise.Sound.Players;
using Clampwise.Storage;
using Clampwise.Theory;

namespace Clampwise.Commands;

/// <summary>The bare command: opens the screens on what this machine and this player have.</summary>
internal static class OpenCommand
{
    public static int Run(Surroundings around, string? dataFolder, int minutes)
    {
        if (minutes is < 1 or > 120)
        {
            return around.Refuse(new Fault($"--minutes: expected 1 to 120, found {minutes}"));
        }

        if (!DataFolder.Find(dataFolder, around.Variable).TryGet(out DataFolder? folder, out Fault? fault))
        {
            return around.Refuse(fault);
        }

        if (!ProgressStore.Open(folder, around.Time).TryGet(out ProgressStore? store, out fault))
        {
            around.Error.WriteLine($"clampwise: {fault}");
            return ExitCode.Trouble;
        }

        using (store)
        {
            // The device opens while the first screen is drawn; a notice comes later if it fails.
            using ISoundOut sound = SoundSystem.Open(SoundSettings.Standard, TimeSpan.Zero);
            var library = DrillLibrary.Load(folder);
            GlyphSet glyphs = GlyphSet.For(around.Variable);
            var settings = new DeskSettings(glyphs, new PracticeCalendar(around.Time.LocalTimeZone, PracticeCalendar.UsualDayStart), FsrsSettings.Usual)
            {
                SessionLength = TimeSpan.FromMinutes(minutes),
            };
            var random = new Random();
            var desk = new Desk(library.Drills, store, store.LoadMemory(settings.Memory), sound, settings, around.Time, Guid.NewGuid, random.Next);
            var shell = new Shell(Theme.Own.At(ColourDepths.Of(around.Variable)), glyphs);
            shell.Open(new TodayPage(shell, desk, [.. store.Notices, .. library.Faults.Select(unread => unread.ToString())]));
            TerminalHost.Run(shell);
            desk.Close();
        }

        return ExitCode.Good;
    }
}
