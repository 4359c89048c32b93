using Clampwise.Theory;

namespace Clampwise.Sound.Players.Alsa;

/// <summary>Plays on Linux through libasound, in floating point where the device takes it, else in 16 bits.</summary>
internal sealed class AlsaDevice : ISoundDevice
{
    private const int Channels = 2;
    private const int MostRetries = 4;
    private readonly string _name;
    private nint _pcm;
    private bool _isShort;
    private short[] _shorts = [];

    public AlsaDevice(string? name) => _name = name ?? "default";

    /// <inheritdoc/>
    public Fault? Open(SampleRate rate, TimeSpan latency)
    {
        Close();
        try
        {
            AlsaLibrary.Hush();
            // Opened without blocking: a busy device would hang here otherwise.
            int error = AlsaLibrary.Open(out _pcm, _name, AlsaLibrary.Playback, AlsaLibrary.NonBlocking);
            if (error < 0)
            {
                _pcm = 0;
                return FaultOf(error);
            }

            return Configure(rate, latency);
        }
        catch (Exception missing) when (missing is DllNotFoundException or EntryPointNotFoundException or BadImageFormatException)
        {
            return SoundWords.NoAlsa;
        }
    }

    /// <inheritdoc/>
    public unsafe Fault? Write(ReadOnlySpan<float> stereo)
    {
        if (!_isShort)
        {
            fixed (float* samples = stereo)
            {
                return WriteAll((byte*)samples, stereo.Length / Channels, sizeof(float));
            }
        }

        Samples.ToShorts(stereo, _shorts = _shorts.Length < stereo.Length ? new short[stereo.Length] : _shorts);
        fixed (short* samples = _shorts)
        {
            return WriteAll((byte*)samples, stereo.Length / Channels, sizeof(short));
        }
    }

    /// <inheritdoc/>
    public void Rest()
    {
        if (_pcm != 0)
        {
            _ = AlsaLibrary.Drain(_pcm);
            _ = AlsaLibrary.Prepare(_pcm);
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (_pcm != 0)
        {
            _ = AlsaLibrary.Drain(_pcm);
        }

        Close();
    }

    private Fault? Configure(SampleRate rate, TimeSpan latency)
    {
        uint microseconds = (uint)latency.TotalMicroseconds;
        int Try(int format) => AlsaLibrary.SetParams(_pcm, format, AlsaLibrary.Interleaved, Channels, (uint)rate.Hertz, 1, microseconds);
        int error = Try(AlsaLibrary.Float);
        _isShort = error < 0;
        error = _isShort ? Try(AlsaLibrary.Short) : error;
        error = error < 0 ? error : AlsaLibrary.NonBlock(_pcm, 0);
        if (error < 0)
        {
            Close();
            return FaultOf(error);
        }

        return null;
    }

    private unsafe Fault? WriteAll(byte* samples, int frames, int sampleBytes)
    {
        int retries = 0;
        for (int done = 0; done < frames;)
        {
            nint written = AlsaLibrary.Write(_pcm, samples + ((long)done * Channels * sampleBytes), (nuint)(frames - done));
            if (written > 0)
            {
                (done, retries) = (done + (int)written, 0);
            }
            else if (++retries > MostRetries || (written < 0 && AlsaLibrary.Recover(_pcm, (int)written, 1) < 0))
            {
                Close();
                return FaultOf((int)written);
            }
        }

        return null;
    }

    private Fault FaultOf(int error) => error switch
    {
        AlsaLibrary.Busy or AlsaLibrary.Again => SoundWords.DeviceBusy(_name),
        AlsaLibrary.NoEntry or AlsaLibrary.NoDevice => SoundWords.NoDevice(_name),
        _ => SoundWords.DeviceFailed(_name, AlsaLibrary.Words(error)),
    };

    private void Close()
    {
        if (_pcm != 0)
        {
            _ = AlsaLibrary.Close(_pcm);
            _pcm = 0;
        }
    }
}
