using System.Buffers.Binary;
using System.Runtime.InteropServices;
using Clampwise.Theory;
using NAudio.Wave;

namespace Clampwise.Sound.Files;

/// <summary>Writes performances as WAV (RIFF, format tags 1 and 3).</summary>
public static class WaveFile
{
    private const int FramesAtATime = 4096;

    /// <summary>Renders a performance into a stream that can be sought in, and leaves it open. Gives the number of frames.</summary>
    public static long Write(Stream stream, IInstrument instrument, Performance performance, WaveDepth depth, SampleRate rate = default) =>
        Write(stream, instrument.Start(performance, rate), depth, rate);

    private static long Write(Stream stream, IRendering rendering, WaveDepth depth, SampleRate rate)
    {
        using var writer = new WaveFileWriter(stream, FormatOf(depth, rate));
        var block = new float[2 * FramesAtATime];
        var bytes = new byte[sizeof(float) * block.Length];
        long written = 0;
        for (int frames = rendering.Read(block); frames > 0; frames = rendering.Read(block))
        {
            writer.Write(bytes, 0, Convert(block.AsSpan(0, 2 * frames), bytes, depth));
            written += frames;
        }

        return written;
    }

    // The writer's own conversion cuts off instead of rounding.
    private static int Convert(ReadOnlySpan<float> samples, Span<byte> bytes, WaveDepth depth)
    {
        switch (depth)
        {
            case WaveDepth.Bits16:
                Samples.ToShorts(samples, MemoryMarshal.Cast<byte, short>(bytes));
                return samples.Length * sizeof(short);
            case WaveDepth.Bits24:
                // Each write of four bytes is cut short by the next one; the last needs its fourth byte of room.
                for (int i = 0; i < samples.Length; i++)
                {
                    BinaryPrimitives.WriteInt32LittleEndian(bytes[(3 * i)..], Samples.To24(samples[i]));
                }

                return samples.Length * 3;
            default:
                samples.CopyTo(MemoryMarshal.Cast<byte, float>(bytes));
                return samples.Length * sizeof(float);
        }
    }

    private static WaveFormat FormatOf(WaveDepth depth, SampleRate rate) => depth switch
    {
        WaveDepth.Bits16 => new WaveFormat(rate.Hertz, 16, 2),
        WaveDepth.Bits24 => new WaveFormat(rate.Hertz, 24, 2),
        _ => WaveFormat.CreateIeeeFloatWaveFormat(rate.Hertz, 2),
    };
}
