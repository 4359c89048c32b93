using Clampwise.Screens;
using Clampwise.Settings;
using Clampwise.Sound.Players;
using Clampwise.Storage;
using Clampwise.Theory;

namespace Clampwise.Commands;

/// <summary>The bare command: opens the screens on what this machine and this player have.</summary>
internal static class OpenCommand
{
    public static int Run(Surroundings around, string? dataFolder, int? minutes)
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
            var settings = new SettingsKeeper(SettingsFile.In(folder));
            TimeSpan? given = minutes is { } number ? TimeSpan.FromMinutes(number) : null;
            // The device opens while the first screen is drawn; a notice comes later if it fails.
            ISoundOut sound = around.OpenSound(settings.Now.Sound, TimeSpan.Zero);
            var library = DrillLibrary.Load(folder);
            DeskSettings forDesk = SettingsInForce.ForDesk(settings.Now, around, given);
            var random = new Random();
            var desk = new Desk(library.Drills, store, store.LoadMemory(forDesk.Memory), sound, forDesk, around.Time, Guid.NewGuid, random.Next);
            try
            {
                var shell = new Shell(settings.Now.ThemeFor(around.Variable), desk.Glyphs);
                var inForce = new SettingsInForce(shell, desk, settings, around, given, store.LoadMemory);
                shell.Open(new TodayPage(shell, desk, settings, inForce.Settle, [.. store.Notices, .. library.Faults.Select(unread => unread.ToString())]));
                TerminalHost.Run(shell);
                desk.Close();
            }
            finally
            {
                // Not the one it began with, if the player has chosen another.
                desk.Sound.Dispose();
            }
        }

        return ExitCode.Good;
    }
}
