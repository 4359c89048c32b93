namespace Clampwise.Sound.SoundFonts;

/// <summary>How the zones of a SoundFont are put together.</summary>
/// <param name="Gain">Linear gain for everything.</param>
/// <param name="StringPan">How far the outer strings stand to the sides.</param>
/// <param name="HasRoom">With the room that the computed guitar also stands in.</param>
internal sealed record SoundFontMix(double Gain, double StringPan, bool HasRoom)
{
    /// <summary>For playing: about as loud as the computed guitar with an ordinary font, and headroom for a hard strum.</summary>
    public static SoundFontMix Standard { get; } = new(0.3, 0.2, true);

    /// <summary>For comparing with other players: their usual master gain.</summary>
    public static SoundFontMix Plain { get; } = new(0.2, 0.0, false);
}
