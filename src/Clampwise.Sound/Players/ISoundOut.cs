namespace Clampwise.Sound.Players;

/// <summary>Where performances are heard. Every member returns at once and never throws for want of a device: that is a notice.</summary>
public interface ISoundOut : IDisposable
{
    /// <summary>True if what is played can be heard; ear questions make sense only then.</summary>
    bool IsAudible { get; }

    /// <summary>One line for the player when there is no sound, or when something about it is not as asked for; else null.</summary>
    string? Notice { get; }

    /// <summary>The voice that plays from the next performance on.</summary>
    IInstrument Instrument { get; set; }

    /// <summary>Raised when <see cref="IsAudible"/> or <see cref="Notice"/> has changed, on a thread of the player's own.</summary>
    event EventHandler? Changed;

    /// <summary>Plays; whatever is still sounding fades out within a few milliseconds, without a click.</summary>
    void Play(Performance performance);

    /// <summary>Fades out whatever is sounding.</summary>
    void Stop();
}
