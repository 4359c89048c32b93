using System.Text;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>The file that the settings of one player stand in: <c>settings.toml</c> in the data folder. It need not exist. Which settings there are is not known here.</summary>
/// <param name="Path">Where it is.</param>
public sealed record SettingsFile(string Path)
{
    /// <summary>Its name.</summary>
    public const string Name = "settings.toml";

    /// <summary>The file of a data folder.</summary>
    public static SettingsFile In(DataFolder folder) => new(System.IO.Path.Combine(folder.Root, Name));

    /// <summary>True if there is one, even one that can't be read, such as a folder of its name.</summary>
    public bool Exists => System.IO.Path.Exists(Path);

    /// <summary>What it says; nothing without one.</summary>
    public Result<TomlFile> Read() => TextNow().Select(text => TomlFile.Parse(text, Name));

    /// <summary>Puts one value into it, as a whole or not at all.</summary>
    /// <param name="table">The table that the key stands in.</param>
    /// <param name="key">The key in that table.</param>
    /// <param name="written">The value in TOML.</param>
    /// <param name="readsBack">True for a value that means what was written.</param>
    /// <returns>What stood in the way; null if all went well.</returns>
    public Fault? Put(string table, string key, string written, Func<TomlValue, bool> readsBack) =>
        TextNow().Then(now => TomlEdit.Put(now, table, key, written, readsBack)).TryGet(out string? edited, out Fault? fault) ? Write(edited) : fault;

    /// <summary>Writes a whole text, unless there is a file.</summary>
    /// <returns>What stood in the way; null if all went well.</returns>
    public Fault? WriteFirst(string text) => Exists ? StorageWords.SettingsAreThere(Path) : Write(text);

    private Result<string> TextNow() => Exists ? Disk.ReadText(Path) : "";

    // A link stays a link: what it points to is written.
    private Fault? Write(string text) => Disk.WriteWhole((Exists ? File.ResolveLinkTarget(Path, returnFinalTarget: true)?.FullName : null) ?? Path, Encoding.UTF8.GetBytes(text));
}
