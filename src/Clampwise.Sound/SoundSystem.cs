using System.Runtime.InteropServices;
using Clampwise.Sound.Players;
using Clampwise.Sound.Players.Alsa;
using Clampwise.Sound.Players.Mac;
using Clampwise.Sound.Players.Windows;
using Clampwise.Sound.Strings;

namespace Clampwise.Sound;

/// <summary>Makes what is heard out of settings: a voice, and a device of this machine.</summary>
public static class SoundSystem
{
    /// <summary>
    /// Opens the sound of this machine. Returns after <paramref name="patience"/> at the latest, with the device still opening in the
    /// background if it takes longer; <see cref="ISoundOut.Changed"/> then tells how it went. Never throws for want of a device.
    /// </summary>
    /// <param name="settings">What the player has set.</param>
    /// <param name="patience">How long to wait for the device's answer; zero not to wait.</param>
    public static ISoundOut Open(SoundSettings settings, TimeSpan patience)
    {
        IInstrument instrument = new PluckedGuitar();
        if (!settings.IsOn)
        {
            return new SilentOut(SoundWords.SoundIsOff, instrument);
        }

        if (DeviceOf(settings) is not { } device)
        {
            return new SilentOut(SoundWords.NoSound(SoundWords.NoPlayerFor(RuntimeInformation.OSDescription)), instrument);
        }

        var output = new DeviceOut(device, instrument, settings);
        output.WaitForAnswer(patience);
        return output;
    }

    private static ISoundDevice? DeviceOf(SoundSettings settings) =>
        OperatingSystem.IsWindows() ? new WindowsDevice()
        : OperatingSystem.IsLinux() ? new AlsaDevice(settings.Device)
        : OperatingSystem.IsMacOS() ? new MacDevice()
        : null;
}
