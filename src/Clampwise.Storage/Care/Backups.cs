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
            if (Read(backup) is { IsGood: true, Value.Faults.IsEmpty: true } good && good.Value.Lines >= backup.Count)
            {
                return (backup, good.Value.Entries);
            }
        }

        return null;
    }

    /// <summary>Makes a backup of every sound line before a mark, and deletes the backups that are too old.</summary>
    /// <returns>The backup; a fault if nothing has been practised yet.</returns>
    internal Result<Backup> Make(Journal journal, JournalMark end, string? tag = null)
    {
        string beside = Path.Combine(folder.Backups, "new.tmp");
        try
        {
            Directory.CreateDirectory(folder.Backups);
            int count = Zip(journal, end, beside);
            if (count == 0)
            {
                return StorageWords.NothingToBackUp;
            }

            DateOnly today = DateOnly.FromDateTime(time.GetLocalNow().DateTime);
            string name = $"{today:yyyy-MM-dd}-{count.ToString("D6", CultureInfo.InvariantCulture)}{(tag is null ? "" : "-" + tag)}{Ending}";
            File.Move(beside, Path.Combine(folder.Backups, name), overwrite: true);
            Prune(today, name);
            return Parse(Path.Combine(folder.Backups, name))!;
        }
        catch (Exception exception) when (Disk.IsExpected(exception))
        {
            return StorageWords.CannotWrite(folder.Backups, exception.Message);
        }
        finally
        {
            Disk.TryDelete(beside);
        }
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

    private static int Zip(Journal journal, JournalMark end, string path)
    {
        using var file = new FileStream(path, FileMode.Create, FileAccess.Write, FileShare.None);
        int count;
        using (var zip = new GZipStream(file, CompressionLevel.Fastest, leaveOpen: true))
        {
            count = journal.CopySound(end, zip);
        }

        file.Flush(flushToDisk: true);
        return count;
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
