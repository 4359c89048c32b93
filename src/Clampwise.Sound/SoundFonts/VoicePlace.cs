namespace Clampwise.Sound.SoundFonts;

/// <summary>What a note tells each of its zones.</summary>
/// <param name="Start">The frame of its start.</param>
/// <param name="Release">The frame at which it is let go.</param>
/// <param name="Ratio">How many times the equal-tempered frequency at A4 = 440 Hz it sounds.</param>
/// <param name="Gain">Linear gain on top of the zone's own.</param>
/// <param name="Pan">Shift from left (-1) to right (1).</param>
internal readonly record struct VoicePlace(long Start, long Release, double Ratio, double Gain, double Pan);
