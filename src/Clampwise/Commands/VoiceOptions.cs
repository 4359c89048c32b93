using System.CommandLine;
using Clampwise.Sound;

namespace Clampwise.Commands;

/// <summary>Which voice plays: the computed guitar, or a SoundFont file of the player's own.</summary>
internal sealed class VoiceOptions
{
    private readonly Option<string?> _soundFont = new("--soundfont") { Description = "A SoundFont file (SF2) to play with, instead of the computed guitar.", HelpName = "file" };
    private readonly Option<string?> _preset = new("--preset") { Description = "With --soundfont: the preset's name, part of it, its number, or bank:number; the first guitar unless given.", HelpName = "preset" };

    /// <summary>Adds the options to a command.</summary>
    public void AddTo(Verb command)
    {
        command.Add(_soundFont);
        command.Add(_preset);
        command.Needs(_preset, _soundFont);
    }

    /// <summary>The options.</summary>
    public IEnumerable<Option> All => [_soundFont, _preset];

    /// <summary>The settings with the voice that the options ask for.</summary>
    public SoundSettings In(SoundSettings settings, ParseResult parsed) => parsed.GetValue(_soundFont) is { } file
        ? settings with { SoundFontPath = file, SoundFontPreset = parsed.GetValue(_preset) }
        : settings;
}
