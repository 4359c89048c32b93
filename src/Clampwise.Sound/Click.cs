namespace Clampwise.Sound;

/// <summary>One beat of a metronome.</summary>
/// <param name="Start">When, from the start of the performance.</param>
/// <param name="IsAccented">True on the first beat of a bar: higher in pitch.</param>
public readonly record struct Click(TimeSpan Start, bool IsAccented);
