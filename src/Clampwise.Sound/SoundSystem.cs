using System.Runtime.InteropServices;
using Clampwise.Sound.Players;
using Clampwise.Sound.Players.Alsa;
using Clampwise.Sound.Players.Mac;
using Clampwise.Sound.Players.Windows;
using Clampwise.Sound.SoundFonts;
using Clampwise.Sound.Strings;
using Clampwise.Theory;

namespace Clampwise.Sound;

/// <summary>Makes what is heard out of settings: a voice, and a device of this machine.</summary>
public static class SoundSystem
{
    /// <summary>
    /// Opens the sound of this machine. Returns after <paramref name="patience"/> at the latest, with the device still opening in the
    /// background if it takes longer; <see cref="ISoundOut.Changed"/> then tells how it went. Never throws for want of a device. The
    /// computed guitar is warmed up and a SoundFont is loaded in the background; until then, and if it can't be, the computed guitar plays.
    /// </summary>
    /// <param name="settings">What the player has set.</param>
    /// <param name="patience">How long to wait for the device's answer; zero not to wait.</param>
    public static ISoundOut Open(SoundSettings settings, TimeSpan patience)
    {
        var guitar = new PluckedGuitar();
        if (!settings.IsOn)
        {
            return new SilentOut(SoundWords.SoundIsOff, guitar);
        }

        if (DeviceOf(settings) is not { } device)
        {
            return new SilentOut(SoundWords.NoSound(SoundWords.NoPlayerFor(RuntimeInformation.OSDescription)), guitar);
        }

        var output = new DeviceOut(device, guitar, settings);
        _ = Task.Run(() => Prepare(output, guitar, settings));
        output.WaitForAnswer(patience);
        return output;
    }

    /// <summary>The voice that the settings ask for; a fault if its SoundFont can't be played. Reads files: not for a screen's thread.</summary>
    public static Result<IInstrument> LoadInstrument(SoundSettings settings) => settings.SoundFontPath is not { } path
        ? new PluckedGuitar()
        : SoundFontFile.Open(path).Then(file => file.Find(settings.SoundFontPreset).Then(file.Load)).Select(instrument => (IInstrument)instrument);

    private static void Prepare(DeviceOut output, PluckedGuitar guitar, SoundSettings settings)
    {
        guitar.WarmUp(settings.Rate);
        if (settings.SoundFontPath is null)
        {
            return;
        }

        if (LoadInstrument(settings).TryGet(out IInstrument? instrument, out Fault? fault))
        {
            output.Instrument = instrument;
        }
        else
        {
            output.Remark(SoundWords.GuitarInstead(fault));
        }
    }

    private static ISoundDevice? DeviceOf(SoundSettings settings) =>
        OperatingSystem.IsWindows() ? new WindowsDevice()
        : OperatingSystem.IsLinux() ? new AlsaDevice(settings.Device)
        : OperatingSystem.IsMacOS() ? new MacDevice()
        : null;
}
