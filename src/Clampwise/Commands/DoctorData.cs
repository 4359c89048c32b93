using Clampwise.Screens;
using Clampwise.Settings;
using Clampwise.Storage;
using Clampwise.Theory;

namespace Clampwise.Commands;

/// <summary>Looks at what lies on the disk: progress, settings, drills.</summary>
internal static class DoctorData
{
    private const string Part = "data";

    public static IEnumerable<DoctorFinding> Settings(SettingsFile file, SettingsReading read) =>
        !file.Exists ? [DoctorFinding.Ok("settings", "there is no file, so the default ones hold; 'clampwise settings --write' makes one")]
        : read.Faults.IsEmpty ? [DoctorFinding.Ok("settings", file.Path)]
        : read.Faults.Select(fault => DoctorFinding.Wrong("settings", fault.Message, $"change it in {file.Path}; until then its default value holds"));

    /// <summary>The report of the last time that the program failed, if there is one.</summary>
    public static IEnumerable<DoctorFinding> LastFailure(DataFolder folder)
    {
        string path = FailureReport.In(folder);
        if (!File.Exists(path))
        {
            return [];
        }

        string[] lines = Disk.ReadText(path) is { IsGood: true } read ? read.Value.Split('\n') : [];
        string words = lines is [var head, var what, ..] ? $"it failed once: {head.Trim()}: {what.Trim()}" : "it failed once, and the report cannot be read";
        return [DoctorFinding.Look("failure", words, $"what helps to mend it stands in {path}; delete that file once it is passed on")];
    }

    public static IEnumerable<DoctorFinding> Drills(DataFolder folder)
    {
        var library = DrillLibrary.Load(folder);
        int own = library.Sheets.Count(sheet => sheet.Origin == DrillOrigin.Own);
        return library.Faults.IsEmpty
            ? [DoctorFinding.Ok("drills", $"{library.Sheets.Length} read, {own} of them your own")]
            : library.Faults.Select(fault => DoctorFinding.Wrong("drills", fault.Message, $"change it in {folder.Drills}; until then the drill is left out"));
    }

    /// <summary>Opens the store as every start does, which also repairs what a sudden end left behind; a folder that is not there yet is not made.</summary>
    public static IEnumerable<DoctorFinding> Folder(DataFolder folder, TimeProvider time)
    {
        if (!Directory.Exists(folder.Root))
        {
            return [DoctorFinding.Ok(Part, $"{folder.Root} is made at the first start")];
        }

        if (!ProgressStore.Open(folder, time).TryGet(out ProgressStore? store, out Fault? fault))
        {
            return [DoctorFinding.Wrong(Part, fault.Message, "update the program, or name another folder with --data")];
        }

        using (store)
        {
            int entries = store.ReadAll().Count;
            return [Writing(store, entries), .. store.IsReadOnly ? [] : Remarks(store).Concat(Damage(store, time)), Backups(folder, time, entries)];
        }
    }

    private static DoctorFinding Writing(ProgressStore store, int entries)
    {
        DataFolder folder = store.Folder;
        string held = $"{folder.Root}: {Counted.Of(entries, "entry", "entries")}";
        return !store.IsReadOnly ? DoctorFinding.Ok(Part, $"{held}, can be written to")
            : CanWrite(folder) ? DoctorFinding.Look(Part, $"{held}, in use by {LockHolder.Of(folder.LockFile) ?? "another copy of the program"}", "close that one; two copies cannot keep answers at a time")
            : DoctorFinding.Wrong(Part, store.Notices.FirstOrDefault() ?? $"{folder.Root} cannot be written to", "give yourself the right to write there, or name another folder with --data");
    }

    private static IEnumerable<DoctorFinding> Remarks(ProgressStore store) =>
        store.Notices.Select(notice => DoctorFinding.Look(Part, notice, "nothing to do if it says that it was put right; else bring back a backup"));

    private static IEnumerable<DoctorFinding> Damage(ProgressStore store, TimeProvider time) =>
        DataCheck.Run(store, new Backups(store.Folder, time), time.GetUtcNow()).Problems.Select(problem =>
            DoctorFinding.Wrong(Part, problem, "'clampwise data rebuild' makes the database anew from the journal, 'clampwise data restore' brings back a backup"));

    private static DoctorFinding Backups(DataFolder folder, TimeProvider time, int entries)
    {
        var backups = new Backups(folder, time);
        int count = backups.All.Length;
        return backups.NewestGood() is { } good ? DoctorFinding.Ok("backups", $"{count}, the newest sound one of {good.Backup.Date:yyyy-MM-dd} with {Counted.Of(good.Entries.Length, "entry", "entries")}")
            : count > 0 ? DoctorFinding.Wrong("backups", $"{count}, and none of them can be read to its end", $"look at the disk that {folder.Backups} lies on; the next practice day makes a new one")
            : DoctorFinding.Ok("backups", entries == 0 ? "none, since nothing has been practised yet" : "none yet: one is made on every practice day");
    }

    private static bool CanWrite(DataFolder folder)
    {
        string probe = Path.Combine(folder.Root, $".probe-{Environment.ProcessId}");
        try
        {
            File.WriteAllBytes(probe, []);
            File.Delete(probe);
            return true;
        }
        catch (Exception refused) when (Disk.IsExpected(refused))
        {
            return false;
        }
    }
}
