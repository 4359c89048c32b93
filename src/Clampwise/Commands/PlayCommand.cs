using System.CommandLine;
using Clampwise.Settings;
using Clampwise.Sound;
using Clampwise.Sound.Players;
using Clampwise.Storage;
using Clampwise.Theory;

namespace Clampwise.Commands;

/// <summary><c>clampwise play SETUP FRETTING</c>: strums a voicing.</summary>
internal static class PlayCommand
{
    private static readonly TimeSpan s_patience = TimeSpan.FromSeconds(3);
    private static readonly TimeSpan s_fadeOut = TimeSpan.FromMilliseconds(300);

    public static Command Build(Surroundings around, Option<string?> data)
    {
        Argument<string> setup = SharedOptions.SetupArgument();
        Argument<string[]> fretting = SharedOptions.FrettingArgument();
        Option<bool> behind = SharedOptions.Behind();
        var stroke = new Stroke();
        var voice = new VoiceOptions();
        var command = new Verb("play", "Play a voicing.", "play 2-4@2 x04600 --stroke arpeggio", "play 2-4@2 x04600 --string 3") { setup, fretting, behind, data };
        stroke.AddTo(command);
        voice.AddTo(command);
        command.SetAction(parsed =>
        {
            Result<Performance> performance = SharedOptions.ReadVoicing(parsed.GetRequiredValue(setup), string.Join(' ', parsed.GetRequiredValue(fretting)), parsed.GetValue(behind)).Then(voicing => stroke.Of(voicing, parsed));
            return performance.TryGet(out Performance? play, out Fault? fault) ? Play(around, voice.In(SettingsOf(around, parsed.GetValue(data)), parsed), play) : around.Refuse(fault);
        });
        return command;
    }

    // The player's own device, if there is a data folder that names one.
    private static SoundSettings SettingsOf(Surroundings around, string? data) =>
        DataFolder.Find(data, around.Variable).TryGet(out DataFolder? folder, out _) ? new SettingsKeeper(SettingsFile.In(folder)).Now.Sound : SoundSettings.Standard;

    private static int Play(Surroundings around, SoundSettings settings, Performance performance)
    {
        using ISoundOut output = around.OpenSound(settings, s_patience);
        if (!output.IsAudible)
        {
            around.Error.WriteLine($"clampwise: {output.Notice}");
            return ExitCode.Trouble;
        }

        output.Play(performance);
        around.Wait(performance.End + s_fadeOut);
        return ExitCode.Good;
    }
}
