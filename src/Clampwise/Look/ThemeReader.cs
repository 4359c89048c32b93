using Clampwise.Storage;
using Clampwise.Terminal;
using Clampwise.Theory;

namespace Clampwise.Look;

/// <summary>
/// Reads themes from TOML, a table each: <c>about</c>, then either <c>ground</c> (a colour that is painted) or <c>grounds</c> (what the
/// terminal's own ground may be), then a style for every tone.
/// </summary>
internal static class ThemeReader
{
    private const string AboutKey = "about";
    private const string GroundKey = "ground";
    private const string GroundsKey = "grounds";
    private static readonly Tone[] s_tones = Enum.GetValues<Tone>();

    /// <summary>The themes of a text, or the first thing wrong with it.</summary>
    public static Result<ThemeBook> Read(string text, string file)
    {
        var toml = TomlFile.Parse(text, file);
        if (toml.Faults.FirstOrDefault() is { } trouble)
        {
            return trouble.ToFault();
        }

        var themes = new List<Theme>();
        foreach (TomlTable table in toml.Tables)
        {
            if (!ReadTheme(table, toml).TryGet(out Theme? theme, out Fault? fault))
            {
                return fault;
            }

            themes.Add(theme);
        }

        return themes.Count > 0 ? new ThemeBook([.. themes]) : FaultAt(toml, toml.Head.At, "there is no theme: expected a table, such as [own]");
    }

    private static Result<Theme> ReadTheme(TomlTable table, TomlFile toml)
    {
        string about = "";
        ThemeStyle? ground = null;
        var grounds = new List<Rgb>();
        var styles = new ThemeStyle?[s_tones.Length];
        foreach (TomlEntry entry in table.Entries)
        {
            string key = entry.Key;
            Result<bool> taken = key switch
            {
                AboutKey => Text(entry).Select(words => (about = words) is not null),
                GroundKey => Text(entry).Then(ThemeStyle.Parse).Select(style => (ground = style) is not null),
                GroundsKey => Grounds(entry, grounds),
                _ when Array.FindIndex(s_tones, tone => Word(tone) == key) is >= 0 and var index => Text(entry).Then(ThemeStyle.Parse).Select(style => (styles[index] = style) is not null),
                _ => new Fault($"there is no key '{key}' in a theme: expected {AboutKey}, {GroundKey}, {GroundsKey} or a tone: {string.Join(", ", s_tones.Select(Word))}"),
            };
            if (!taken.TryGet(out _, out Fault? fault))
            {
                return FaultAt(toml, entry.At, fault.Message);
            }
        }

        return Whole(table.Name, ground?.Ink, grounds, styles) is { } missing
            ? FaultAt(toml, table.At, missing)
            : new Theme(table.Name, about, ground?.Ink, ground?.Ink is { } painted ? [painted.Exact] : [.. grounds], [.. styles.Select(style => style!)]);
    }

    // On a painted ground the terminal's own ink may be anything, so every tone brings its own.
    private static string? Whole(string name, ThemeColour? ground, List<Rgb> grounds, ThemeStyle?[] styles)
    {
        Tone[] missing = [.. s_tones.Where(tone => styles[(int)tone] is not { } style || (ground is not null && style.Ink is null))];
        return missing.Length > 0 ? $"theme '{name}' lacks a {(ground is null ? "style" : "colour")} for {string.Join(", ", missing.Select(Word))}"
            : ground is null == (grounds.Count == 0) ? $"theme '{name}' needs either '{GroundKey}' or '{GroundsKey}'"
            : null;
    }

    private static Result<bool> Grounds(TomlEntry entry, List<Rgb> grounds)
    {
        if (entry.Value is not TomlValue.List list)
        {
            return new Fault($"'{GroundsKey}' takes a list of colours, such as [\"#000000\", \"#ffffff\"]");
        }

        foreach (TomlValue item in list.Items)
        {
            if (item is not TomlValue.Text { Value: var text } || !ThemeStyle.Parse(text).TryGet(out ThemeStyle? style, out _) || style.Ink is not { } ink)
            {
                return new Fault($"'{GroundsKey}' takes colours, such as \"#000000\"");
            }

            grounds.Add(ink.Exact);
        }

        return true;
    }

    private static Result<string> Text(TomlEntry entry) =>
        entry.Value is TomlValue.Text { Value: var text } ? text : new Fault($"'{entry.Key}' takes a text in quotes");

    private static string Word(Tone tone) => tone.ToString().ToLowerInvariant();

    private static Fault FaultAt(TomlFile toml, TextPlace at, string message) => toml.At(at, message).ToFault();
}
