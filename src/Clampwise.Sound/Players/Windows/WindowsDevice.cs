using System.Runtime.InteropServices;
using System.Runtime.Versioning;
using Clampwise.Theory;
using NAudio;
using NAudio.Wave;

namespace Clampwise.Sound.Players.Windows;

/// <summary>Plays on Windows through NAudio: the shared-mode audio session, else the older wave-out interface.</summary>
[SupportedOSPlatform("windows")]
internal sealed class WindowsDevice : ISoundDevice
{
    private const int WaveOutBufferMilliseconds = 20;
    private const double QueueSeconds = 0.016;
    private FrameQueue? _queue;
    private IWavePlayer? _player;
    private volatile bool _isLost;

    /// <inheritdoc/>
    public Fault? Open(SampleRate rate, TimeSpan latency)
    {
        Close();
        _queue = new FrameQueue(2 * (int)rate.FrameAt(TimeSpan.FromSeconds(QueueSeconds)));
        var provider = new QueueProvider(_queue, rate);
        Fault? first = TryStart(() => new WasapiPlayerBuilder().WithSharedMode().WithEventSync().WithLatency((int)latency.TotalMilliseconds).Build(), provider);
        return first is null ? null : TryStart(() => WaveOutOf(latency), provider) is null ? null : first;
    }

    /// <inheritdoc/>
    public Fault? Write(ReadOnlySpan<float> stereo) =>
        _queue is { } queue && !_isLost && queue.Write(stereo) && !_isLost ? null : SoundWords.DeviceLost("default");

    /// <inheritdoc/>
    public void Rest()
    {
        // The queue gives silence by itself, and an awake device answers the next strum sooner.
    }

    /// <inheritdoc/>
    public void Dispose() => Close();

    private static WaveOut WaveOutOf(TimeSpan latency) => new()
    {
        BufferMilliseconds = WaveOutBufferMilliseconds,
        NumberOfBuffers = Math.Max(2, (int)Math.Ceiling(latency.TotalMilliseconds / WaveOutBufferMilliseconds)),
    };

    private Fault? TryStart(Func<IWavePlayer> make, QueueProvider provider)
    {
        try
        {
            _isLost = false;
            _player = make();
            _player.PlaybackStopped += (_, _) => _isLost = true;
            _player.Init(provider);
            _player.Play();
            return null;
        }
        catch (Exception problem) when (problem is COMException or MmException or InvalidOperationException or NotSupportedException
            or ArgumentException or DllNotFoundException or UnauthorizedAccessException)
        {
            Close();
            return SoundWords.NoWindowsDevice(problem.Message);
        }
    }

    private void Close()
    {
        try
        {
            _player?.Dispose();
        }
        catch (Exception problem) when (problem is COMException or MmException or InvalidOperationException)
        {
            // The device went away before it could be closed.
        }

        _player = null;
    }
}
