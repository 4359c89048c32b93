using Clampwise.Sound;
using Clampwise.Sound.Players;

namespace Clampwise.Application;

/// <summary>The sound that is in use now: another device or voice can take its place while the program runs.</summary>
public sealed class SoundInUse : IDisposable
{
    private ISoundOut _sound;

    /// <summary>The sound to begin with.</summary>
    public SoundInUse(ISoundOut sound)
    {
        _sound = sound;
        _sound.Changed += OnChanged;
    }

    /// <inheritdoc cref="ISoundOut.Changed"/>
    public event EventHandler? Changed;

    /// <inheritdoc cref="ISoundOut.IsAudible"/>
    public bool IsAudible => _sound.IsAudible;

    /// <inheritdoc cref="ISoundOut.Notice"/>
    public string? Notice => _sound.Notice;

    /// <inheritdoc cref="ISoundOut.Play"/>
    public void Play(Performance performance) => _sound.Play(performance);

    /// <inheritdoc cref="ISoundOut.Stop"/>
    public void Stop() => _sound.Stop();

    /// <summary>Plays through another device from now on; the one before it is closed first, since two may not have it at once.</summary>
    /// <param name="open">Opens it.</param>
    public void Change(Func<ISoundOut> open)
    {
        _sound.Changed -= OnChanged;
        _sound.Dispose();
        _sound = open();
        _sound.Changed += OnChanged;
    }

    /// <inheritdoc/>
    public void Dispose() => _sound.Dispose();

    private void OnChanged(object? sender, EventArgs e) => Changed?.Invoke(this, e);
}
