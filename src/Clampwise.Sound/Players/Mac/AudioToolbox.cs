using System.Runtime.InteropServices;

namespace Clampwise.Sound.Players.Mac;

/// <summary>The calls of AudioToolbox that are used (Audio Queue Services). Results other than 0 are errors.</summary>
internal static unsafe partial class AudioToolbox
{
    /// <summary>'lpcm' with the flags for packed floating point.</summary>
    public const uint LinearPcm = 0x6C70636D;

    /// <summary>kAudioFormatFlagIsFloat and kAudioFormatFlagIsPacked.</summary>
    public const uint FloatPacked = 1 | 8;

    private const string Library = "/System/Library/Frameworks/AudioToolbox.framework/AudioToolbox";

    /// <summary>AudioStreamBasicDescription.</summary>
    [StructLayout(LayoutKind.Sequential)]
    public struct StreamDescription
    {
        public double SampleRate;
        public uint FormatId;
        public uint FormatFlags;
        public uint BytesPerPacket;
        public uint FramesPerPacket;
        public uint BytesPerFrame;
        public uint ChannelsPerFrame;
        public uint BitsPerChannel;
        public uint Reserved;
    }

    /// <summary>The first fields of AudioQueueBuffer.</summary>
    [StructLayout(LayoutKind.Sequential)]
    public struct QueueBuffer
    {
        public uint Capacity;
        public byte* Data;
        public uint ByteSize;
    }

    [LibraryImport(Library, EntryPoint = "AudioQueueNewOutput")]
    public static partial int NewOutput(
        in StreamDescription format, delegate* unmanaged[Cdecl]<nint, nint, QueueBuffer*, void> callback, nint user, nint runLoop, nint mode, uint flags, out nint queue);

    [LibraryImport(Library, EntryPoint = "AudioQueueAllocateBuffer")]
    public static partial int AllocateBuffer(nint queue, uint bytes, out QueueBuffer* buffer);

    [LibraryImport(Library, EntryPoint = "AudioQueueEnqueueBuffer")]
    public static partial int Enqueue(nint queue, QueueBuffer* buffer, uint packetDescriptions, nint descriptions);

    [LibraryImport(Library, EntryPoint = "AudioQueueStart")]
    public static partial int Start(nint queue, nint startTime);

    [LibraryImport(Library, EntryPoint = "AudioQueueDispose")]
    public static partial int Dispose(nint queue, byte immediate);
}
