using System.Collections.Immutable;
using Clampwise.Storage;
using Clampwise.Theory;
using Tomlyn.Syntax;

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
    public static SettingsReading Of(string text, string file)
    {
        DocumentSyntax document = TomlDocument.Parse(text, file);
        var faults = document.Diagnostics.Select(message => FaultAt(file, message.Span.Start, message.Message)).ToList();
        faults.AddRange(document.Tables.Select(table => TableFault(table) is { } words ? FaultAt(file, table.Span.Start, words) : null).OfType<FileFault>());
        PlayerSettings settings = PlayerSettings.Usual;
        var seen = new HashSet<string>();
        foreach (TomlEntry entry in TomlEntries.Of(document).Where(entry => entry.Value is not null && seen.Add(entry.Path)))
        {
            if (SettingList.Find(entry.Path) is not { } setting)
            {
                faults.Add(FaultAt(file, entry.At.Span.Start, SettingsWords.UnknownKey(entry.Path)));
            }
            else if (setting.Read(settings, entry.Value!).TryGet(out PlayerSettings? changed, out Fault? fault))
            {
                settings = changed;
            }
            else
            {
                faults.Add(FaultAt(file, entry.Value!.Span.Start, SettingsWords.Of(setting, fault)));
            }
        }

        return new SettingsReading(settings, [.. faults.OrderBy(fault => fault.Line).ThenBy(fault => fault.Column).Select(fault => fault.ToFault())]);
    }

    private static string? TableFault(TableSyntaxBase table)
    {
        string name = TomlEntries.NameOf(table);
        return table is TableArraySyntax ? SettingsWords.ListOfTables(name)
            : table.Items.ChildrenCount == 0 && !SettingList.Tables.Any(known => known.Table == name) ? SettingsWords.UnknownKey(name)
            : null;
    }

    private static FileFault FaultAt(string file, TextPosition at, string message) => new(file, at.Line + 1, at.Column + 1, message);
}
