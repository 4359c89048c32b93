namespace Clampwise.Sound.Players;

/// <summary>
/// A short queue between the player's thread, which writes and waits for room, and a system that calls for samples when it likes.
/// What is called for and not there is silence.
/// </summary>
internal sealed class FrameQueue
{
    private static readonly TimeSpan s_patience = TimeSpan.FromSeconds(2);
    private readonly object _lock = new();
    private readonly float[] _ring;
    private int _start;
    private int _count;

    /// <summary>A queue for so many samples.</summary>
    public FrameQueue(int samples) => _ring = new float[samples];

    /// <summary>Waits for room and adds samples; false if nobody has called for any in two seconds: the device hangs or is gone.</summary>
    public bool Write(ReadOnlySpan<float> samples)
    {
        lock (_lock)
        {
            while (!samples.IsEmpty)
            {
                int room = Math.Min(_ring.Length - _count, samples.Length);
                for (int i = 0; i < room; i++)
                {
                    _ring[(_start + _count + i) % _ring.Length] = samples[i];
                }

                _count += room;
                samples = samples[room..];
                if (!samples.IsEmpty && !Monitor.Wait(_lock, s_patience))
                {
                    return false;
                }
            }

            return true;
        }
    }

    /// <summary>Takes samples; silence where there are none.</summary>
    public void Read(Span<float> samples)
    {
        lock (_lock)
        {
            int taken = Math.Min(_count, samples.Length);
            for (int i = 0; i < taken; i++)
            {
                samples[i] = _ring[(_start + i) % _ring.Length];
            }

            (_start, _count) = ((_start + taken) % _ring.Length, _count - taken);
            samples[taken..].Clear();
            Monitor.Pulse(_lock);
        }
    }
}
