using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Sound.SoundFonts;

/// <summary>A preset of a SoundFont as a voice.</summary>
public sealed class SoundFontInstrument : IInstrument
{
    private readonly ImmutableArray<SampleZone> _zones;

    internal SoundFontInstrument(SoundFontPreset preset, ImmutableArray<SampleZone> zones) => (Preset, _zones) = (preset, zones);

    /// <summary>Which preset it is.</summary>
    public SoundFontPreset Preset { get; }

    /// <inheritdoc/>
    public string Name => $"{Preset.Name} ({Preset.Bank}:{Preset.Number})";

    /// <summary>How many samples are held in memory.</summary>
    internal long SampleCount => _zones.Select(zone => zone.Source.Data).Distinct().Sum(data => (long)data.Length);

    /// <inheritdoc/>
    public IRendering Start(Performance performance, SampleRate rate) => new SoundFontRendering(_zones, performance, rate, SoundFontMix.Standard);

    /// <summary>As other players of the format mix it, for comparison: no room, no places for the strings.</summary>
    internal IRendering StartPlain(Performance performance, SampleRate rate) => new SoundFontRendering(_zones, performance, rate, SoundFontMix.Plain);
}
