using Clampwise.Theory;
using NAudio.Dsp;
using NAudio.SoundFont;

namespace Clampwise.Sound.SoundFonts;

/// <summary>One region of a preset with its samples read.</summary>
/// <param name="Region">For which keys and velocities, and with which settings.</param>
/// <param name="Source">The samples.</param>
/// <param name="RootKey">The key at which they sound as recorded, 0 to 127.</param>
internal sealed record SampleZone(SoundFontRegion Region, SampleSource Source, int RootKey)
{
    /// <summary>How far the sample was found to be from the pitch that the font states.</summary>
    public Cents Off { get; init; }
}
