using System.Collections.Immutable;
using Clampwise.Theory;
using NAudio.SoundFont;

namespace Clampwise.Sound.SoundFonts;

/// <summary>A SoundFont file of the player's own. Opening reads its tables only; samples are read for the preset that is loaded.</summary>
public sealed class SoundFontFile
{
    private const int SteelGuitar = 25;
    private const int NylonGuitar = 24;
    private const int MostNamed = 5;

    private readonly string _path;
    private readonly RiffMap _map;
    private readonly Dictionary<SoundFontPreset, Preset> _presets;

    private SoundFontFile(string path, RiffMap map, Dictionary<SoundFontPreset, Preset> presets)
    {
        (_path, _map, _presets) = (path, map, presets);
        Presets = [.. presets.Keys.OrderBy(preset => preset.Bank).ThenBy(preset => preset.Number)];
    }

    /// <summary>All presets by bank and number.</summary>
    public ImmutableArray<SoundFontPreset> Presets { get; }

    /// <summary>Opens a file, or says what is wrong with it.</summary>
    public static Result<SoundFontFile> Open(string path)
    {
        try
        {
            using FileStream file = File.OpenRead(path);
            return RiffMap.Read(file).Then(map => PresetTables.Read(file, map).Then(tables => Of(path, map, tables)));
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return SoundFontWords.CannotRead(path, problem.Message);
        }
    }

    /// <summary>
    /// The preset asked for: <c>bank:number</c>, a number in bank 0, a name or part of one; null for the first steel-string guitar, else
    /// any guitar, else the first preset.
    /// </summary>
    public Result<SoundFontPreset> Find(string? asked)
    {
        SoundFontPreset? found = asked is null ? Guitar() : ByNumber(asked.Trim()) ?? ByName(asked.Trim());
        return found is not null ? found : SoundFontWords.NoSuchPreset(asked!, Some());
    }

    /// <summary>Reads a preset's samples and makes a voice of it, or says what is wrong with it.</summary>
    public Result<SoundFontInstrument> Load(SoundFontPreset preset)
    {
        try
        {
            using FileStream file = File.OpenRead(_path);
            return ZoneReader.Read(file, _map, preset, _presets[preset]).Select(zones => new SoundFontInstrument(preset, zones));
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return SoundFontWords.CannotRead(_path, problem.Message);
        }
    }

    private static Result<SoundFontFile> Of(string path, RiffMap map, NAudio.SoundFont.SoundFont tables)
    {
        var presets = new Dictionary<SoundFontPreset, Preset>();
        foreach (Preset preset in tables.Presets)
        {
            presets.TryAdd(new SoundFontPreset(preset.Bank, preset.PatchNumber, Printable(preset.Name)), preset);
        }

        return presets.Count == 0 ? SoundFontWords.NoPresets : new SoundFontFile(path, map, presets);
    }

    // Names come from a stranger's file and go to a terminal.
    private static string Printable(string? name) => string.Concat((name ?? "").Where(c => !char.IsControl(c))).Trim();

    private SoundFontPreset Guitar() =>
        Presets.FirstOrDefault(preset => preset is { Bank: 0, Number: SteelGuitar })
        ?? Presets.FirstOrDefault(preset => preset is { Bank: 0, Number: NylonGuitar })
        ?? ByName("guitar")
        ?? Presets[0];

    private SoundFontPreset? ByNumber(string asked)
    {
        string[] parts = asked.Split(':');
        bool isOne = parts.Length == 1 && int.TryParse(parts[0], out _);
        bool isTwo = parts.Length == 2 && int.TryParse(parts[0], out _) && int.TryParse(parts[1], out _);
        return !isOne && !isTwo ? null
            : Presets.FirstOrDefault(preset => preset.Bank == (isTwo ? int.Parse(parts[0]) : 0) && preset.Number == int.Parse(parts[^1]));
    }

    private SoundFontPreset? ByName(string asked) =>
        Presets.FirstOrDefault(preset => preset.Name.Equals(asked, StringComparison.OrdinalIgnoreCase))
        ?? Presets.FirstOrDefault(preset => asked.Length > 0 && preset.Name.Contains(asked, StringComparison.OrdinalIgnoreCase));

    private string Some() => string.Join(", ", Presets.Take(MostNamed).Select(preset => $"'{preset.Name}' ({preset.Bank}:{preset.Number})"))
        + (Presets.Length > MostNamed ? $" and {Presets.Length - MostNamed} more" : "");
}
