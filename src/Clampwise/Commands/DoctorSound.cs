using Clampwise.Sound;
using Clampwise.Sound.Players;
using Clampwise.Sound.SoundFonts;
using Clampwise.Theory;

namespace Clampwise.Commands;

/// <summary>Looks at the sound: whether the device opens, and whether the player's own SoundFont can be read.</summary>
internal static class DoctorSound
{
    private static readonly TimeSpan s_patience = TimeSpan.FromSeconds(3);

    public static IEnumerable<DoctorFinding> Examine(Surroundings around, SoundSettings settings) =>
        settings.SoundFontPath is { } path ? [Device(around, settings), SoundFont(path, settings.SoundFontPreset)] : [Device(around, settings)];

    private static DoctorFinding Device(Surroundings around, SoundSettings settings)
    {
        if (!settings.IsOn)
        {
            return DoctorFinding.Ok("sound", "switched off in the settings");
        }

        using ISoundOut output = around.OpenSound(settings, s_patience);
        string device = settings.Device is { } name ? $"the device {name}" : "the system's own device";
        return output.IsAudible
            ? DoctorFinding.Ok("sound", $"{device} opens, {settings.Latency.TotalMilliseconds:0} ms held ahead{(output.Notice is { } notice ? $"; {notice}" : "")}")
            : Silent(settings, output.Notice ?? $"{device} does not open", "see to that, or switch sound off in the settings (sound.on): all but the questions for the ear works without");
    }

    // Without any device all but the ear questions works; one that the player asked for by name should be there.
    private static DoctorFinding Silent(SoundSettings settings, string words, string mend) =>
        settings.Device is null ? DoctorFinding.Look("sound", words, mend) : DoctorFinding.Wrong("sound", words, mend);

    private static DoctorFinding SoundFont(string path, string? preset) =>
        SoundFontFile.Open(path).Then(file => file.Find(preset).Then(file.Load)).TryGet(out SoundFontInstrument? instrument, out Fault? fault)
            ? DoctorFinding.Ok("soundfont", $"{path}: {instrument.Name}")
            : DoctorFinding.Wrong("soundfont", fault.Message, "set sound.soundfont and sound.preset, or leave them empty for the computed guitar");
}
