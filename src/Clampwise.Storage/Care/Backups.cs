using System.Collections.Immutable;
using System.Globalization;
using System.IO.Compression;
using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>
/// The backups of the journal: one a day, compressed (gzip), the seven newest kept. The one with the most entries is kept as well, so
/// that a journal that was lost unnoticed does not push out what could bring it back.
/// </summary>
public sealed class Backups(DataFolder folder, TimeProvider time)
{
    /// <summary>How many days are kept.</summary>
    public const int Kept = 7;

    private const string Ending = ".jsonl.gz";

    /// <summary>All backups, the newest first.</summary>
    public ImmutableArray<Backup> All => !Directory.Exists(folder.Backups) ? [] :
    [
        .. Directory.EnumerateFiles(folder.Backups, "*" + Ending).Select(Parse).OfType<Backup>()
            .OrderByDescending(backup => backup.Date).ThenByDescending(backup => backup.Count).ThenBy(backup => backup.Name, StringComparer.Ordinal),
    ];

    /// <summary>Reads a backup: its entries, each once, and the lines that are damaged.</summary>
    public static Result<LogReadout> Read(Backup backup)
    {
        try
        {
            using FileStream file = File.OpenRead(backup.Path);
            using var unzipped = new GZipStream(file, CompressionMode.Decompress);
            return LogReadout.Of(unzipped, backup.Name, mayLackCrc: false);
        }
        catch (Exception exception) when (Disk.IsExpected(exception) || exception is InvalidDataException)
        {
            return StorageWords.CannotRead(backup.Name, exception.Message);
        }
    }

    /// <summary>The newest backup that can be read to its end without a damaged line; null if there is none.</summary>
    public (Backup Backup, ImmutableArray<LogEntry> Entries)? NewestGood()
    {
        foreach (Backup backup in All)
        {
            if (Read(backup) is { IsGood: true, Value.Faults.IsEmpty: true } good && good.Value.Entries.Length >= backup.Count)
            {
                return (backup, good.Value.Entries);
            }
        }

        return null;
    }

    /// <summary>Makes the backup of the day, unless there is one that holds as much, and deletes the ones that are too old.</summary>
    /// <returns>The backup; a fault if nothing has been practised yet.</returns>
    internal Result<Backup> Make(Journal journal, string? tag = null)
    {
        DateOnly today = DateOnly.FromDateTime(time.GetLocalNow().DateTime);
        Dictionary<EntryId, LogEntry> entries = EntryUnion.Of(
            journal.Read(JournalMark.Start, new EntryReader()).Where(record => record.Entry.IsGood).Select(record => record.Entry.Value));
        if (entries.Count == 0)
        {
            return StorageWords.NothingToBackUp;
        }

        string name = $"{today:yyyy-MM-dd}-{entries.Count.ToString("D6", CultureInfo.InvariantCulture)}{(tag is null ? "" : "-" + tag)}{Ending}";
        string path = Path.Combine(folder.Backups, name);
        if (!File.Exists(path) && Disk.WriteWhole(path, Zipped(entries.Values)) is { } fault)
        {
            return fault;
        }

        Prune(today, name);
        return Parse(path)!;
    }

    /// <summary>True if there is a backup of today.</summary>
    internal bool HasToday()
    {
        DateOnly today = DateOnly.FromDateTime(time.GetLocalNow().DateTime);
        return All.Any(backup => backup.Date == today && backup.Tag is null);
    }

    private void Prune(DateOnly today, string made)
    {
        ImmutableArray<Backup> daily = [.. All.Where(backup => backup.Tag is null)];
        HashSet<DateOnly> days = [.. daily.Select(backup => backup.Date).Distinct().Take(Kept)];
        Backup? largest = daily.MaxBy(backup => backup.Count);
        foreach (Backup backup in daily.Where(backup => backup != largest && backup.Name != made && (backup.Date == today || !days.Contains(backup.Date))))
        {
            Disk.TryDelete(backup.Path);
        }
    }

    private static byte[] Zipped(IEnumerable<LogEntry> entries)
    {
        using var bytes = new MemoryStream();
        using (var zip = new GZipStream(bytes, CompressionLevel.Fastest, leaveOpen: true))
        {
            foreach (LogEntry entry in entries)
            {
                zip.Write(JournalLine.Encode(entry));
            }
        }

        return bytes.ToArray();
    }

    private static Backup? Parse(string path)
    {
        string name = Path.GetFileName(path);
        string[] parts = name[..^Ending.Length].Split('-', 5);
        return parts.Length >= 4
            && DateOnly.TryParseExact(string.Join('-', parts[..3]), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly date)
            && int.TryParse(parts[3], NumberStyles.None, CultureInfo.InvariantCulture, out int count)
                ? new Backup(name, path, date, count, parts.Length > 4 ? parts[4] : null)
                : null;
    }
}
