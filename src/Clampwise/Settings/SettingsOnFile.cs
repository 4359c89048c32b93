using Clampwise.Storage;
using Clampwise.Theory;

namespace Clampwise.Settings;

/// <summary>The settings that a settings file holds.</summary>
internal static class SettingsOnFile
{
    /// <summary>What the file says; the usual settings without one.</summary>
    public static SettingsReading Load(this SettingsFile file) =>
        file.Read().TryGet(out TomlFile? read, out Fault? fault) ? SettingsReading.Of(read) : SettingsReading.Usual with { Faults = [fault] };

    /// <summary>True if the file itself names a setting, so that its value was chosen.</summary>
    public static bool Names(this SettingsFile file, string key) => file.Read().TryGet(out TomlFile? read, out _) && read.Entries.Any(entry => entry.Key == key);

    /// <summary>Puts one value into it, as a whole or not at all.</summary>
    /// <returns>What stood in the way; null if all went well.</returns>
    public static Fault? Save(this SettingsFile file, Setting setting, PlayerSettings settings)
    {
        string written = setting.Write(settings);
        return file.Put(setting.Table, setting.Name, written, value =>
            setting.Read(PlayerSettings.Usual, value).TryGet(out PlayerSettings? read, out _) && setting.Write(read) == written);
    }

    /// <summary>Writes the usual settings out in full, unless there is a file.</summary>
    /// <returns>What stood in the way; null if all went well.</returns>
    public static Fault? WriteUsual(this SettingsFile file) => file.WriteFirst(SettingsText.Of(PlayerSettings.Usual));
}
