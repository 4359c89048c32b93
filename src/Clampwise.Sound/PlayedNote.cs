using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Sound;

/// <summary>One string picked once.</summary>
/// <param name="String">Which string.</param>
/// <param name="Pitch">What it sounds, before any detuning.</param>
/// <param name="StoppedAt">Where its sounding length begins, counted from the nut.</param>
/// <param name="Contact">What stops it there.</param>
/// <param name="Start">When the pick leaves the string, from the start of the performance.</param>
/// <param name="Length">How long it rings until it is damped.</param>
public sealed record PlayedNote(StringNumber String, Pitch Pitch, Fret StoppedAt, Contact Contact, TimeSpan Start, TimeSpan Length)
{
    /// <summary>How hard it is picked.</summary>
    public Strength Strength { get; init; }

    /// <summary>How far the string is out of tune.</summary>
    public Cents Detune { get; init; }

    /// <summary>When it is damped, from the start of the performance.</summary>
    public TimeSpan End => Start + Length;
}
