using Clampwise.Theory;

namespace Clampwise.Sound;

/// <summary>What the player has set about sound. The default plays the computed guitar on the system's own device.</summary>
public sealed record SoundSettings
{
    private const int ShortestMilliseconds = 20;
    private const int LongestMilliseconds = 100;

    /// <summary>The settings of a new installation.</summary>
    public static SoundSettings Standard { get; } = new();

    /// <summary>Frames a second.</summary>
    public SampleRate Rate { get; init; }

    /// <summary>How much sound the device holds ahead: 20 to 100 ms, 40 at first. Shorter answers sooner, longer never stutters.</summary>
    public TimeSpan Latency { get; private init; } = TimeSpan.FromMilliseconds(40);

    /// <summary>The system's name of the device (on Linux an ALSA name, such as <c>hw:1</c>); null for the system's default.</summary>
    public string? Device { get; init; }

    /// <summary>A SoundFont file of the player's own; null for the computed guitar.</summary>
    public string? SoundFontPath { get; init; }

    /// <summary>The preset of that file: its name, part of it, its number, or bank:number; null for the first guitar in it.</summary>
    public string? SoundFontPreset { get; init; }

    /// <summary>False for no sound at all, with no device opened.</summary>
    public bool IsOn { get; init; } = true;

    /// <summary>The same with another latency, or a fault outside 20 to 100 ms.</summary>
    public Result<SoundSettings> WithLatency(int milliseconds) => milliseconds is >= ShortestMilliseconds and <= LongestMilliseconds
        ? this with { Latency = TimeSpan.FromMilliseconds(milliseconds) }
        : SoundWords.LatencyOutOfRange(milliseconds, ShortestMilliseconds, LongestMilliseconds);
}
