namespace Clampwise.Sound.SoundFonts;

/// <summary>How the zones of a SoundFont are put together.</summary>
/// <param name="Gain">Linear gain for everything.</param>
/// <param name="StringPan">How far the outer strings stand to the sides.</param>
/// <param name="HasRoom">With the room that the computed guitar also stands in.</param>
/// <param name="IsInTune">With the errors of the font's own tuning taken out.</param>
internal sealed record SoundFontMix(double Gain, double StringPan, bool HasRoom, bool IsInTune)
{
    /// <summary>For playing: about as loud as the computed guitar with an ordinary font, and headroom for a hard strum.</summary>
    public static SoundFontMix Standard { get; } = new(0.45, 0.2, true, true);

    /// <summary>For comparing with other players: a master gain of 0.2 and 3 dB less for each side of a centred zone.</summary>
    public static SoundFontMix Plain { get; } = new(0.1416, 0.0, false, false);
}
