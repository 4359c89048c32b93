using System.Collections.Immutable;
using Clampwise.Storage;
using Clampwise.Theory;

namespace Clampwise.Settings;

/// <summary>The settings in force while the program runs, and their file.</summary>
internal sealed class SettingsKeeper(SettingsFile file)
{
    private SettingsReading _read = file.Load();

    /// <summary>Raised with the settings before and after a change.</summary>
    public event Action<PlayerSettings, PlayerSettings>? Changed;

    /// <summary>The settings in force.</summary>
    public PlayerSettings Now => _read.Settings;

    /// <summary>What is wrong with the file; empty if all is well.</summary>
    public ImmutableArray<Fault> Faults => _read.Faults;

    /// <summary>The first fault, and how many there are; null if all is well.</summary>
    public string? FaultsInShort => Faults.Length switch
    {
        0 => null,
        1 => Faults[0].Message,
        var count => $"(1 of {count}) {Faults[0].Message}",
    };

    /// <summary>Where they are kept.</summary>
    public SettingsFile File => file;

    /// <summary>Puts one changed setting into force and into the file.</summary>
    /// <returns>Why it is not in the file, and so holds for this run only; null if all went well.</returns>
    public Fault? Change(Setting setting, PlayerSettings changed)
    {
        PlayerSettings before = Now;
        Fault? fault = file.Save(setting, changed);
        _read = new SettingsReading(changed, fault is null ? file.Load().Faults : Faults);
        Changed?.Invoke(before, changed);
        return fault;
    }
}
