using Clampwise.Theory;

namespace Clampwise.Sound.Players;

/// <summary>A device that takes frames. All members but <see cref="IDisposable.Dispose"/> are called on the player's own thread and may block there.</summary>
internal interface ISoundDevice : IDisposable
{
    /// <summary>Opens the device, or says why it can't be opened. Can be called again after a fault.</summary>
    Fault? Open(SampleRate rate, TimeSpan latency);

    /// <summary>Hands over interleaved stereo frames and waits for room; a fault if the device is gone.</summary>
    Fault? Write(ReadOnlySpan<float> stereo);

    /// <summary>Plays out what was handed over and rests until more comes.</summary>
    void Rest();
}
