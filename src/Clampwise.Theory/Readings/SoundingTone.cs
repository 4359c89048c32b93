namespace Clampwise.Theory;

/// <summary>What a sounding pitch is in a reading: its degree above the root, and the spelling that follows from it.</summary>
public readonly record struct SoundingTone(Pitch Pitch, ChordDegree Degree, SpelledPitch Spelled);
