using System.Text;
using Clampwise.Storage;
using Clampwise.Theory;

namespace Clampwise.Settings;

/// <summary>The file that the settings of one player stand in: <c>settings.toml</c> in the data folder. It need not exist.</summary>
/// <param name="Path">Where it is.</param>
internal sealed record SettingsFile(string Path)
{
    private const string Name = "settings.toml";

    /// <summary>The file of a data folder.</summary>
    public static SettingsFile In(DataFolder folder) => new(System.IO.Path.Combine(folder.Root, Name));

    /// <summary>True if there is one, even one that can't be read, such as a folder of its name.</summary>
    public bool Exists => System.IO.Path.Exists(Path);

    /// <summary>What it says; the usual settings without one.</summary>
    public SettingsReading Load()
    {
        if (!Exists)
        {
            return SettingsReading.Usual;
        }

        return Disk.ReadText(Path).TryGet(out string? text, out Fault? fault) ? SettingsReading.Of(text, Name) : SettingsReading.Usual with { Faults = [fault] };
    }

    /// <summary>Puts one value into it, as a whole or not at all.</summary>
    /// <returns>What stood in the way; null if all went well.</returns>
    public Fault? Save(Setting setting, PlayerSettings settings)
    {
        Result<string> text = Exists ? Disk.ReadText(Path) : "";
        return text.Then(now => SettingsEdit.Put(now, setting, setting.Write(settings))).TryGet(out string? edited, out Fault? fault) ? Write(edited) : fault;
    }

    /// <summary>Writes the usual settings out in full, unless there is a file.</summary>
    /// <returns>What stood in the way; null if all went well.</returns>
    public Fault? WriteUsual() => Exists ? SettingsWords.IsThere(Path) : Write(SettingsText.Of(PlayerSettings.Usual));

    // A link stays a link: what it points to is written.
    private Fault? Write(string text) => Disk.WriteWhole((Exists ? File.ResolveLinkTarget(Path, returnFinalTarget: true)?.FullName : null) ?? Path, Encoding.UTF8.GetBytes(text));
}
