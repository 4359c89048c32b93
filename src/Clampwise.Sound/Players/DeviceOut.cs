using Clampwise.Theory;

namespace Clampwise.Sound.Players;

/// <summary>Plays through a device from a thread of its own, which opens it, keeps it fed, and lives through its loss.</summary>
internal sealed class DeviceOut : ISoundOut
{
    private const double BlockSeconds = 0.008;
    private const double RestAfterSeconds = 5.0;
    private const int FarewellBlocks = 2;
    private static readonly TimeSpan s_farewell = TimeSpan.FromMilliseconds(500);

    private readonly ISoundDevice _device;
    private readonly SoundSettings _settings;
    private readonly LiveMix _mix;
    private readonly float[] _block;
    private readonly AutoResetEvent _wake = new(initialState: true);
    private readonly ManualResetEventSlim _answered = new();
    private readonly Thread _thread;
    private volatile bool _isClosing;
    private volatile Fault? _fault;
    private volatile bool _isOpen;
    private volatile string? _remark;
    private volatile IInstrument _instrument;

    public DeviceOut(ISoundDevice device, IInstrument instrument, SoundSettings settings)
    {
        (_device, _instrument, _settings) = (device, instrument, settings);
        _mix = new LiveMix(settings.Rate);
        _block = new float[2 * (int)settings.Rate.FrameAt(TimeSpan.FromSeconds(BlockSeconds))];
        _thread = new Thread(Run) { IsBackground = true, Name = "sound", Priority = ThreadPriority.AboveNormal };
        _thread.Start();
    }

    /// <inheritdoc/>
    public event EventHandler? Changed;

    /// <inheritdoc/>
    public bool IsAudible => _isOpen;

    /// <inheritdoc/>
    public string? Notice => _fault is { } fault ? SoundWords.NoSound(fault)
        : _answered.IsSet ? _remark : SoundWords.DeviceNotYetReady;

    /// <inheritdoc/>
    public IInstrument Instrument
    {
        get => _instrument;
        set => _instrument = value;
    }

    /// <summary>Adds a notice that stands as long as the device has none.</summary>
    public void Remark(string remark)
    {
        _remark = remark;
        Changed?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Waits until the device has opened or refused, at most so long; true if it has.</summary>
    public bool WaitForAnswer(TimeSpan atMost) => _answered.Wait(atMost);

    /// <inheritdoc/>
    public void Play(Performance performance)
    {
        _mix.Post(Instrument.Start(performance, _settings.Rate));
        _wake.Set();
    }

    /// <inheritdoc/>
    public void Stop() => _mix.Post(null);

    /// <inheritdoc/>
    public void Dispose()
    {
        if (_isClosing)
        {
            return;
        }

        _isClosing = true;
        _mix.Post(null);
        _wake.Set();
        // A device that hangs keeps its thread, which ends with the program; the screen doesn't wait for it.
        if (_thread.Join(s_farewell))
        {
            _wake.Dispose();
            _answered.Dispose();
        }
    }

    private void Run()
    {
        while (!_isClosing)
        {
            _wake.WaitOne();
            if (!_isClosing && (_isOpen || Open()))
            {
                Feed();
            }
        }

        _ = Guarded(() =>
        {
            _device.Dispose();
            return null;
        });
    }

    private bool Open()
    {
        Set(Guarded(() => _device.Open(_settings.Rate, _settings.Latency)));
        _answered.Set();
        return _isOpen;
    }

    // Until nothing has sounded for some seconds, so that strums in a drill find the device awake.
    private void Feed()
    {
        Fault? lost = Guarded(() =>
        {
            double silentSeconds = 0.0;
            Fault? fault = null;
            while (silentSeconds < RestAfterSeconds && !_isClosing && fault is null)
            {
                silentSeconds = _mix.Fill(_block) ? 0.0 : silentSeconds + BlockSeconds;
                fault = _device.Write(_block);
            }

            // When the program ends in the middle of a strum, its fading still has to be heard.
            for (int i = 0; i < FarewellBlocks && _isClosing && fault is null; i++)
            {
                _ = _mix.Fill(_block);
                fault = _device.Write(_block);
            }

            if (fault is null)
            {
                _device.Rest();
            }

            return fault;
        });
        if (lost is not null)
        {
            // Unplugged, perhaps for another device: what plays now is lost, the next strum opens the device anew.
            _mix.Post(null);
            Set(lost);
        }
    }

    // Drivers fail in ways that nobody listed; none of them may end the program, since nobody waits for this thread.
    private static Fault? Guarded(Func<Fault?> use)
    {
        try
        {
            return use();
        }
        catch (Exception problem) when (problem is not OutOfMemoryException)
        {
            return SoundWords.DriverFailed(problem.Message);
        }
    }

    private void Set(Fault? fault)
    {
        bool isNew = _fault?.Message != fault?.Message || _isOpen != fault is null;
        (_fault, _isOpen) = (fault, fault is null);
        if (isNew)
        {
            Changed?.Invoke(this, EventArgs.Empty);
        }
    }
}
