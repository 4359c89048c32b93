namespace Clampwise.Sound.Players;

/// <summary>No sound, and why.</summary>
public sealed class SilentOut : ISoundOut
{
    /// <summary>No sound for a reason, one line.</summary>
    public SilentOut(string notice, IInstrument instrument) => (Notice, Instrument) = (notice, instrument);

    /// <inheritdoc/>
    public event EventHandler? Changed
    {
        add { }
        remove { }
    }

    /// <inheritdoc/>
    public bool IsAudible => false;

    /// <inheritdoc/>
    public string? Notice { get; }

    /// <inheritdoc/>
    public IInstrument Instrument { get; set; }

    /// <inheritdoc/>
    public void Play(Performance performance)
    {
    }

    /// <inheritdoc/>
    public void Stop()
    {
    }

    /// <inheritdoc/>
    public void Dispose()
    {
    }
}
