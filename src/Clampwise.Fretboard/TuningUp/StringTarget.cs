using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>What one string has to sound once the clamps are on.</summary>
/// <param name="String">Which string.</param>
/// <param name="Pitch">Its pitch from its ground.</param>
/// <param name="Spelled">The same as the setup's sounding key writes it.</param>
/// <param name="Hertz">Its frequency in equal temperament at the concert pitch.</param>
/// <param name="IsHeld">True if a clamp holds it, which pulls it sharp.</param>
public sealed record StringTarget(StringNumber String, Pitch Pitch, SpelledPitch Spelled, double Hertz, bool IsHeld);
