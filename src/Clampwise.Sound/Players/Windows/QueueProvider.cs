using System.Runtime.InteropServices;
using Clampwise.Theory;
using NAudio.Wave;

namespace Clampwise.Sound.Players.Windows;

/// <summary>Hands a queue's samples to an NAudio player; never ends.</summary>
internal sealed class QueueProvider(FrameQueue queue, SampleRate rate) : IWaveProvider
{
    /// <inheritdoc/>
    public WaveFormat WaveFormat { get; } = WaveFormat.CreateIeeeFloatWaveFormat(rate.Hertz, 2);

    /// <inheritdoc/>
    public int Read(Span<byte> buffer)
    {
        queue.Read(MemoryMarshal.Cast<byte, float>(buffer));
        return buffer.Length;
    }
}
