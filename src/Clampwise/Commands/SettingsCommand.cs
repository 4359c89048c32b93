using System.CommandLine;
using System.Text.Json;
using Clampwise.Settings;
using Clampwise.Storage;
using Clampwise.Theory;

namespace Clampwise.Commands;

/// <summary><c>clampwise settings</c>: what holds, or with <c>--write</c> a file of the usual settings to change.</summary>
internal static class SettingsCommand
{
    private const int KeyWidth = 21;
    private const int ValueWidth = 12;

    public static Command Build(Surroundings around, Option<string?> data)
    {
        var write = new Option<bool>("--write") { Description = "Write the default settings into a new settings.toml, each explained; an existing one is left as it is." };
        Option<bool> json = SharedOptions.Json();
        var command = new Verb("settings", "List the settings that hold, and say what is wrong with the settings file.", "settings", "settings --write") { write, json, data };
        command.SetAction(parsed =>
        {
            if (!DataFolder.Find(parsed.GetValue(data), around.Variable).TryGet(out DataFolder? folder, out Fault? fault))
            {
                return around.Refuse(fault);
            }

            var file = SettingsFile.In(folder);
            return parsed.GetValue(write) ? Write(around, file, parsed.GetValue(json)) : Print(around, file, parsed.GetValue(json));
        });
        return command;
    }

    private static int Write(Surroundings around, SettingsFile file, bool asJson)
    {
        if (file.WriteUsual() is { } fault)
        {
            return around.Fail(fault);
        }

        if (asJson)
        {
            JsonLines.Print(around.Out, new FileRow(file.Path));
        }
        else
        {
            around.Out.WriteLine(file.Path);
        }

        return ExitCode.Good;
    }

    private static int Print(Surroundings around, SettingsFile file, bool asJson)
    {
        SettingsReading read = file.Load();
        if (!asJson)
        {
            around.PrintLines([$"{file.Path}{(file.Exists ? "" : " (not there: the default settings hold)")}"]);
        }

        foreach (Setting setting in SettingList.All)
        {
            if (asJson)
            {
                JsonLines.Print(around.Out, SettingRow.Of(setting, read.Settings));
            }
            else
            {
                around.PrintLines([Line(setting, read.Settings)], KeyWidth + 1);
            }
        }

        foreach (Fault fault in read.Faults)
        {
            around.Complain(fault.ToString(), ExitCode.BadInput);
        }

        return read.Faults.IsEmpty ? ExitCode.Good : ExitCode.BadInput;
    }

    private static string Line(Setting setting, PlayerSettings settings)
    {
        string value = setting.Write(settings);
        string usual = setting.Write(PlayerSettings.Usual);
        return $"{setting.Key.PadRight(KeyWidth)} {value.PadRight(ValueWidth)} {(value == usual ? "" : $"(default {usual}) ")}{setting.About}";
    }
}

/// <summary>A file that was written as printed by <c>settings --write --json</c>.</summary>
internal sealed record FileRow(string File);

/// <summary>A setting as printed by <c>settings --json</c>; the values are those of TOML, which JSON has as well.</summary>
internal sealed record SettingRow(string Key, JsonElement Value, JsonElement Usual, string About, string Takes)
{
    public static SettingRow Of(Setting setting, PlayerSettings settings) =>
        new(setting.Key, Json(setting.Write(settings)), Json(setting.Write(PlayerSettings.Usual)), setting.About, setting.Expected);

    private static JsonElement Json(string written)
    {
        using var document = JsonDocument.Parse(written);
        return document.RootElement.Clone();
    }
}
