using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Clampwise.Sound.Players.Alsa;

/// <summary>The calls of libasound that are used (ALSA project, PCM interface). Negative results are errors.</summary>
internal static unsafe partial class AlsaLibrary
{
    public const int Playback = 0;
    public const int NonBlocking = 1;
    public const int Interleaved = 3;
    public const int Short = 2;
    public const int Float = 14;

    // Linux error numbers (errno.h).
    public const int NoEntry = -2;
    public const int Again = -11;
    public const int Busy = -16;
    public const int NoDevice = -19;

    private const string Library = "libasound.so.2";

    /// <summary>Keeps the library from writing to the terminal.</summary>
    public static void Hush() => _ = SetErrorHandler(&Ignore);

    /// <summary>The library's own words for an error.</summary>
    public static string Words(int error) => Marshal.PtrToStringUTF8(StrError(error)) ?? $"error {error}";

    [LibraryImport(Library, EntryPoint = "snd_pcm_open", StringMarshalling = StringMarshalling.Utf8)]
    public static partial int Open(out nint pcm, string name, int stream, int mode);

    [LibraryImport(Library, EntryPoint = "snd_pcm_set_params")]
    public static partial int SetParams(nint pcm, int format, int access, uint channels, uint rate, int softResample, uint latencyMicroseconds);

    [LibraryImport(Library, EntryPoint = "snd_pcm_nonblock")]
    public static partial int NonBlock(nint pcm, int nonBlocking);

    [LibraryImport(Library, EntryPoint = "snd_pcm_writei")]
    public static partial nint Write(nint pcm, void* frames, nuint count);

    [LibraryImport(Library, EntryPoint = "snd_pcm_recover")]
    public static partial int Recover(nint pcm, int error, int silent);

    [LibraryImport(Library, EntryPoint = "snd_pcm_prepare")]
    public static partial int Prepare(nint pcm);

    [LibraryImport(Library, EntryPoint = "snd_pcm_drain")]
    public static partial int Drain(nint pcm);

    [LibraryImport(Library, EntryPoint = "snd_pcm_close")]
    public static partial int Close(nint pcm);

    [LibraryImport(Library, EntryPoint = "snd_strerror")]
    private static partial nint StrError(int error);

    [LibraryImport(Library, EntryPoint = "snd_lib_error_set_handler")]
    private static partial int SetErrorHandler(delegate* unmanaged[Cdecl]<byte*, int, byte*, int, byte*, void> handler);

    // The library passes more arguments than these; a callee that leaves them alone is safe by the calling conventions of Linux.
    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static void Ignore(byte* file, int line, byte* function, int error, byte* format)
    {
    }
}
