using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>Brings back what a backup holds.</summary>
public static class DataRestore
{
    /// <summary>The newest backup that is good, or the one with the given name.</summary>
    public static Result<Backup> Find(Backups backups, string? name)
    {
        Backup? found = name is null
            ? backups.NewestGood()?.Backup
            : backups.All.FirstOrDefault(backup => backup.Name.StartsWith(name, StringComparison.Ordinal));
        return found is not null ? found : StorageWords.NoBackup(name, [.. backups.All.Select(backup => backup.Name)]);
    }

    /// <summary>Adds what the backup holds and the store lacks: what was answered since the backup stays.</summary>
    public static Result<ImportReport> Run(ProgressStore store, Backup backup) => Backups.Read(backup).Then(readout =>
        store.AddAll(readout.Entries).Select(added => new ImportReport(readout.Lines, added, readout.Faults.Length) { Faults = readout.Faults }));
}
