using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Versioning;
using Clampwise.Theory;

namespace Clampwise.Sound.Players.Mac;

/// <summary>
/// Plays on macOS through Audio Queue Services, three buffers that together hold the wanted latency. Written from the documented
/// interface and not run on that system by its makers.
/// </summary>
[SupportedOSPlatform("macos")]
internal sealed unsafe class MacDevice : ISoundDevice
{
    private const int Channels = 2;
    private const int Buffers = 3;
    private const int FrameBytes = Channels * sizeof(float);
    private FrameQueue? _frames;
    private GCHandle _self;
    private nint _queue;

    /// <inheritdoc/>
    public Fault? Open(SampleRate rate, TimeSpan latency)
    {
        Close();
        int bufferFrames = (int)rate.FrameAt(latency / Buffers);
        _frames = new FrameQueue(Channels * bufferFrames);
        _self = GCHandle.Alloc(this);
        try
        {
            int error = Start(rate, bufferFrames);
            if (error != 0)
            {
                Close();
                return SoundWords.DeviceFailed("default", $"error {error}");
            }

            return null;
        }
        catch (Exception missing) when (missing is DllNotFoundException or EntryPointNotFoundException)
        {
            Close();
            return SoundWords.DeviceFailed("default", missing.Message);
        }
    }

    /// <inheritdoc/>
    public Fault? Write(ReadOnlySpan<float> stereo) => _frames is { } frames && frames.Write(stereo) ? null : SoundWords.DeviceLost("default");

    /// <inheritdoc/>
    public void Rest()
    {
        // The queue gives silence by itself.
    }

    /// <inheritdoc/>
    public void Dispose() => Close();

    private int Start(SampleRate rate, int bufferFrames)
    {
        var format = new AudioToolbox.StreamDescription
        {
            SampleRate = rate.Hertz,
            FormatId = AudioToolbox.LinearPcm,
            FormatFlags = AudioToolbox.FloatPacked,
            BytesPerPacket = FrameBytes,
            FramesPerPacket = 1,
            BytesPerFrame = FrameBytes,
            ChannelsPerFrame = Channels,
            BitsPerChannel = 8 * sizeof(float),
        };
        int error = AudioToolbox.NewOutput(format, &Refill, GCHandle.ToIntPtr(_self), 0, 0, 0, out _queue);
        for (int i = 0; i < Buffers && error == 0; i++)
        {
            error = AudioToolbox.AllocateBuffer(_queue, (uint)(bufferFrames * FrameBytes), out AudioToolbox.QueueBuffer* buffer);
            if (error == 0)
            {
                Fill(buffer);
                error = AudioToolbox.Enqueue(_queue, buffer, 0, 0);
            }
        }

        return error != 0 ? error : AudioToolbox.Start(_queue, 0);
    }

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static void Refill(nint user, nint queue, AudioToolbox.QueueBuffer* buffer)
    {
        if (GCHandle.FromIntPtr(user).Target is MacDevice device)
        {
            device.Fill(buffer);
            _ = AudioToolbox.Enqueue(queue, buffer, 0, 0);
        }
    }

    private void Fill(AudioToolbox.QueueBuffer* buffer)
    {
        _frames!.Read(new Span<float>(buffer->Data, (int)(buffer->Capacity / sizeof(float))));
        buffer->ByteSize = buffer->Capacity;
    }

    private void Close()
    {
        if (_queue != 0)
        {
            // Waits until no callback runs any more.
            _ = AudioToolbox.Dispose(_queue, 1);
            _queue = 0;
        }

        if (_self.IsAllocated)
        {
            _self.Free();
        }
    }
}
