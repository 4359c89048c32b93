using System.Collections.Immutable;
using Clampwise.Storage;
using Clampwise.Theory;

namespace Clampwise.Settings;

/// <summary>What a settings file says, and what is wrong with it: each broken key keeps its usual value.</summary>
/// <param name="Settings">The settings.</param>
/// <param name="Faults">File, line, column, what was wrong, what would be right; empty if all is well.</param>
internal sealed record SettingsReading(PlayerSettings Settings, ImmutableArray<Fault> Faults)
{
    /// <summary>What holds without a file.</summary>
    public static SettingsReading Usual { get; } = new(PlayerSettings.Usual, []);

    /// <summary>Reads the text of a file.</summary>
    /// <param name="text">TOML 1.0.</param>
    /// <param name="file">The file's name, for faults.</param>
    public static SettingsReading Of(string text, string file) => Of(TomlFile.Parse(text, file));

    /// <summary>Reads a file.</summary>
    public static SettingsReading Of(TomlFile file)
    {
        var faults = file.Faults.ToList();
        faults.AddRange(file.Tables.Select(table => TableFault(table) is { } words ? file.At(table.At, words) : null).OfType<FileFault>());
        PlayerSettings settings = PlayerSettings.Usual;
        var seen = new HashSet<string>();
        foreach (TomlEntry entry in file.Entries)
        {
            if (entry.Value is not { } value || !seen.Add(entry.Key) || IsEmptyTable(entry))
            {
                continue;
            }

            if (SettingList.Find(entry.Key) is not { } setting)
            {
                faults.Add(file.At(entry.At, SettingsWords.UnknownKey(entry.Key)));
            }
            else if (setting.Read(settings, value).TryGet(out PlayerSettings? changed, out Fault? fault))
            {
                settings = changed;
            }
            else
            {
                faults.Add(file.At(value.At, SettingsWords.Of(setting, fault)));
            }
        }

        return new SettingsReading(settings, [.. faults.OrderBy(fault => fault.Line).ThenBy(fault => fault.Column).Select(fault => fault.ToFault())]);
    }

    private static bool IsTable(string name) => SettingList.Tables.Any(known => known.Table == name);

    private static bool IsEmptyTable(TomlEntry entry) => entry.Value is TomlValue.Other && IsTable(entry.Key);

    private static string? TableFault(TomlTable table) =>
        table.IsListed ? SettingsWords.ListOfTables(table.Name)
        : table.Entries.IsEmpty && !IsTable(table.Name) ? SettingsWords.UnknownKey(table.Name)
        : null;
}
