using Clampwise.Theory;

namespace Clampwise.Sound;

/// <summary>The wording of every fault and notice that this layer reports.</summary>
internal static class SoundWords
{
    public const string NoteOutOfTime = "A note starts at zero or later and rings for some time.";
    public const string SlownessOutOfRange = "A performance can be slowed down 1 to 8 times.";

    public const string DeviceNotYetReady = "the sound device has not answered yet";
    public const string SoundIsOff = "sound is switched off in the settings";

    public static Fault NoAlsa { get; } = new("the sound library libasound.so.2 is missing: install ALSA (the package libasound2)");

    public static Fault NoWindowsDevice(string reason) =>
        new($"no playback device opens ({reason}): plug one in or enable one in the sound settings");

    public static string NoSound(Fault fault) => $"no sound: {fault.Message}";

    public static string GuitarInstead(Fault fault) => $"the computed guitar plays instead: {fault.Message}";

    public static Fault DeviceBusy(string name) => new($"another program holds the sound device '{name}': close it and play again");

    public static Fault NoDevice(string name) => new($"there is no sound device '{name}': plug one in, or name another in the settings");

    public static Fault DeviceFailed(string name, string reason) => new($"the sound device '{name}' failed: {reason}");

    public static Fault DriverFailed(string reason) => new($"the sound driver failed: {reason}");

    public static Fault DeviceLost(string name) => new($"the sound device '{name}' is gone: plug it in and play again");

    public static Fault NoPlayerFor(string system) => new($"there is no sound player for {system}");

    public static Fault LatencyOutOfRange(int found, int shortest, int longest) =>
        new($"a latency of {found} ms is out of range: use {shortest} to {longest}");

    public static Fault StrengthOutOfRange(double value) => new($"a strength of {value:0.##} is out of range: use 0.05 (soft) to 1 (hard)");

    public static Fault PickPositionOutOfRange(double value) =>
        new($"a pick position of {value:0.##} is out of range: use 0.03 (at the bridge) to 0.5 (the middle of the string)");

    public static Fault PickHardnessOutOfRange(double value) => new($"a pick hardness of {value:0.##} is out of range: use 0 (soft) to 1 (stiff)");

    public static Fault ArpeggioLength(int found, int longest) =>
        new($"an arpeggio picks 1 to {longest} strings, found {found}: write them such as 1 3 5 4", 1);

    public static Fault ArpeggioPlace(string found, int start) =>
        new($"expected the place of a sounding string, 1 for the lowest to 8, found '{found}'", start + 1);

}
