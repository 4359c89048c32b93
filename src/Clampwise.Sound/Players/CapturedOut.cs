using System.Collections.Immutable;
using Clampwise.Sound.Strings;

namespace Clampwise.Sound.Players;

/// <summary>Keeps what it was asked to play instead of sounding it, for tests and for drills without a device.</summary>
public sealed class CapturedOut : ISoundOut
{
    private readonly Lock _lock = new();
    private ImmutableList<Performance> _played = [];

    /// <inheritdoc/>
    public event EventHandler? Changed
    {
        add { }
        remove { }
    }

    /// <summary>Everything played so far, first one first.</summary>
    public IReadOnlyList<Performance> Played => _played;

    /// <summary>How often it was told to stop.</summary>
    public int Stops { get; private set; }

    /// <inheritdoc/>
    public bool IsAudible { get; init; } = true;

    /// <inheritdoc/>
    public string? Notice { get; init; }

    /// <inheritdoc/>
    public IInstrument Instrument { get; set; } = new PluckedGuitar();

    /// <inheritdoc/>
    public void Play(Performance performance)
    {
        lock (_lock)
        {
            _played = _played.Add(performance);
        }
    }

    /// <inheritdoc/>
    public void Stop()
    {
        lock (_lock)
        {
            Stops++;
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
    }
}
