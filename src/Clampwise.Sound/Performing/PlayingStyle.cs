using Clampwise.Theory;

namespace Clampwise.Sound.Performing;

/// <summary>How the hand plays: speed, force, and how far apart things come. Valid as it is; change single settings with <c>with</c>.</summary>
public sealed record PlayingStyle
{
    /// <summary>A firm, unhurried strum that rings for three seconds.</summary>
    public static PlayingStyle Standard { get; } = new();

    /// <summary>From the first string of a strum to the last of a six-string one; 0.02 s is brisk, 0.4 s lets each string be heard.</summary>
    public TimeSpan StrumTime { get; init; } = TimeSpan.FromSeconds(0.075);

    /// <summary>From one note of an arpeggio to the next.</summary>
    public TimeSpan ArpeggioStep { get; init; } = TimeSpan.FromSeconds(0.22);

    /// <summary>How long a strum or a note rings before it is damped.</summary>
    public TimeSpan Ring { get; init; } = TimeSpan.FromSeconds(3.0);

    /// <summary>From the damping of one voicing to the start of the next, when two are played in turn.</summary>
    public TimeSpan Gap { get; init; } = TimeSpan.FromSeconds(0.15);

    /// <summary>How hard the strings are picked.</summary>
    public Strength Strength { get; init; }

    /// <summary>Where and with what.</summary>
    public Pick Pick { get; init; } = Pick.Standard;

    /// <summary>What A4 is tuned to.</summary>
    public ConcertPitch ConcertPitch { get; init; }

    /// <summary>
    /// Seed of the small differences in time and force that a hand makes; null for none. The same seed gives the same performance.
    /// </summary>
    public int? HandSeed { get; init; }

    /// <summary>This style so many times slower, 1 to 8.</summary>
    public PlayingStyle Slower(double times) => times is >= 1.0 and <= 8.0
        ? this with { StrumTime = StrumTime * times, ArpeggioStep = ArpeggioStep * times, Ring = Ring * Math.Sqrt(times) }
        : throw new ArgumentOutOfRangeException(nameof(times), times, SoundWords.SlownessOutOfRange);
}
