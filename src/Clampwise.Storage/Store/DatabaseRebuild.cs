using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>Makes the database anew from the journal, beside the old one, and puts it in its place when it is whole.</summary>
internal static class DatabaseRebuild
{
    /// <summary>Rebuilds; the old file must be closed.</summary>
    public static Result<EntryDatabase> Run(DataFolder folder, Journal journal, List<string> notices)
    {
        string beside = Path.Combine(folder.Root, "rebuild.db");
        try
        {
            Delete(beside);
            var bad = new List<JournalRecord>();
            Dictionary<EntryId, LogEntry> entries = EntryUnion.Of(Good(journal, bad));
            if (bad.Count > 0)
            {
                notices.Add(StorageWords.JournalHasBadLines(bad.Count, bad[0].Line));
            }

            using (EntryDatabase database = EntryDatabase.Open(beside))
            {
                database.Fill(entries.Values, journal.End);
            }

            Delete(folder.Database);
            File.Move(beside, folder.Database);
            return EntryDatabase.Open(folder.Database);
        }
        catch (Exception exception)
        {
            return StorageWords.CannotWrite(folder.Database, exception.Message);
        }
    }

    /// <summary>Closes a database that failed, and sees to it that it is rebuilt at the next start.</summary>
    public static void GiveUp(EntryDatabase database, DataFolder folder)
    {
        try
        {
            database.Dispose();
        }
        catch (Exception)
        {
            // It has failed before; what matters is that its files go.
        }

        Delete(folder.Database);
    }

    /// <summary>Deletes a database and the log of its own that it keeps beside it.</summary>
    public static void Delete(string path)
    {
        Disk.TryDelete(path);
        Disk.TryDelete(LogOf(path));
    }

    /// <summary>Where LiteDB keeps what is not yet in its main file.</summary>
    public static string LogOf(string path) =>
        Path.Combine(Path.GetDirectoryName(path)!, Path.GetFileNameWithoutExtension(path) + "-log" + Path.GetExtension(path));

    private static IEnumerable<LogEntry> Good(Journal journal, List<JournalRecord> bad)
    {
        foreach (JournalRecord record in journal.Read(JournalMark.Start, new EntryReader()))
        {
            if (record.Entry.IsGood)
            {
                yield return record.Entry.Value;
            }
            else
            {
                bad.Add(record);
            }
        }
    }
}
