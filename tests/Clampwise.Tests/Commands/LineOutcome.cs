using Clampwise.Sound;
using Clampwise.Sound.Players;

namespace Clampwise.Tests.Commands;

/// <summary>All that comes of a command line: exit code, both outputs, what was played and with which settings, the files it names.</summary>
internal sealed record LineOutcome(int ExitCode, string Out, string Error, string Sound, string Files)
{
    /// <summary>Carries out a line; the platform's own place for data is in a folder that is given, and words that name a file may be written.</summary>
    public static LineOutcome Of(string home, string input, params string[] words)
    {
        var sound = new CapturedOut();
        var settings = new List<SoundSettings>();
        CommandRun run = CommandRun.In(
            around => around with
            {
                Variable = name => name == "XDG_DATA_HOME" ? Path.Combine(home, "home") : null,
                OpenSound = (asked, _) =>
                {
                    settings.Add(asked);
                    return sound;
                },
            },
            input,
            words);
        string played = string.Join('\n', sound.Played.Select(one => $"{string.Join(' ', one.Notes)} {one.ConcertPitch}"));
        string[] written = [.. words.Where(word => Path.HasExtension(word) && File.Exists(word)).Select(word => Convert.ToHexString(File.ReadAllBytes(word)))];
        return new LineOutcome(run.ExitCode, run.Out, run.Error, $"{string.Join(' ', settings)} {played}", string.Join(' ', written));
    }
}
