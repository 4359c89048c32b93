using System.Text;
using Clampwise.Practice;
using Microsoft.Extensions.Time.Testing;

namespace Clampwise.Storage.Tests;

/// <summary>Files that are torn, cut, zeroed, foreign or out of reach.</summary>
public sealed class DamageTests : IDisposable
{
    private const int Count = 12;
    private readonly ScratchFolder _scratch = new();
    private readonly FakeTimeProvider _time = new(Some.Start);

    public DamageTests()
    {
        using ProgressStore store = Open();
        for (int i = 0; i < Count; i++)
        {
            Assert.Null(store.Append(Some.Attempt(i)));
        }
    }

    private DataFolder Data => _scratch.Data;

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public void A_last_line_torn_at_any_byte_is_reported_and_the_others_are_there()
    {
        byte[] whole = File.ReadAllBytes(Data.Journal);
        int lastStart = whole.AsSpan(0, whole.Length - 1).LastIndexOf((byte)'\n') + 1;
        for (int length = lastStart + 1; length < whole.Length; length += 13)
        {
            File.WriteAllBytes(Data.Journal, whole[..length]);
            DatabaseRebuild.Delete(Data.Database);

            using ProgressStore store = Open();

            Same.Log(Attempts(Count - 1), store.ReadAll());
            Assert.Contains("The last line of the journal was not written to its end", Assert.Single(store.Notices), StringComparison.Ordinal);
            Assert.Null(store.Append(Some.Attempt(Count)));
            Assert.Equal(Count, store.ReadAll().Count);
        }

        Assert.NotEmpty(Directory.GetFiles(Data.KeptAside));
    }

    [Fact]
    public void A_last_line_that_only_lacks_its_line_feed_is_whole()
    {
        byte[] whole = File.ReadAllBytes(Data.Journal);
        File.WriteAllBytes(Data.Journal, whole[..^1]);

        using ProgressStore store = Open();

        Assert.Empty(store.Notices);
        Same.Log(Attempts(Count), store.ReadAll());
        Assert.Equal(whole, File.ReadAllBytes(Data.Journal));
    }

    [Fact]
    public void A_torn_line_that_the_database_knew_comes_back_from_it()
    {
        byte[] whole = File.ReadAllBytes(Data.Journal);
        File.WriteAllBytes(Data.Journal, whole[..^20]);

        using ProgressStore store = Open();

        Same.Log(Attempts(Count), store.ReadAll());
        Assert.Contains(store.Notices, notice => notice.StartsWith("1 entry that the journal had lost was brought back", StringComparison.Ordinal));
        Assert.Equal(Count, store.ReadJournalWhole().Entries.Length);
    }

    [Fact]
    public void A_damaged_line_in_the_middle_is_found_and_a_restore_brings_it_back()
    {
        using (ProgressStore store = Open())
        {
            Assert.True(store.BackUp(new Backups(Data, _time)).IsGood);
        }

        DamageALine();
        DatabaseRebuild.Delete(Data.Database);
        using ProgressStore damaged = Open();
        var backups = new Backups(Data, _time);

        Assert.Equal(Count - 1, damaged.ReadAll().Count);
        Assert.Contains("1 line of the journal is damaged", damaged.Notices[0], StringComparison.Ordinal);
        Assert.Contains("holds 1 entry more than there is now", damaged.Notices[1], StringComparison.Ordinal);
        Assert.Contains("the line is damaged", Assert.Single(DataCheck.Run(damaged, backups).Problems), StringComparison.Ordinal);

        ImportReport report = DataRestore.Find(backups, null).Then(backup => DataRestore.Run(damaged, backup)).Value;
        Assert.Equal((Count, 1), (report.Read, report.Added));
        Same.Log(Attempts(Count), damaged.ReadAll());
    }

    [Fact]
    public void A_rebuild_brings_a_damaged_line_back_from_the_database()
    {
        DamageALine();
        using ProgressStore store = Open();
        Assert.Empty(store.Notices);

        Assert.Equal(Count, store.Rebuild().Value);

        Same.Log(Attempts(Count), store.ReadAll());
        Assert.Equal(Count, store.ReadJournalWhole().Entries.Length);
    }

    public static TheoryData<string> Damages => ["zeroed", "foreign", "empty", "gone"];

    [Theory]
    [MemberData(nameof(Damages))]
    public void A_journal_that_is_none_is_kept_aside_and_made_again_from_the_database(string damage)
    {
        Damage(Data.Journal, damage);

        using ProgressStore store = Open();

        Same.Log(Attempts(Count), store.ReadAll());
        Assert.Equal(Count, store.ReadJournalWhole().Entries.Length);
        Assert.Contains(store.Notices, notice => notice.StartsWith($"{Count} entries that the journal had lost", StringComparison.Ordinal));
        Assert.Equal(damage is "zeroed" or "foreign", Directory.Exists(Data.KeptAside));
    }

    [Theory]
    [MemberData(nameof(Damages))]
    public void A_database_that_is_none_is_kept_aside_and_made_again_from_the_journal(string damage)
    {
        Damage(Data.Database, damage);

        using ProgressStore store = Open();

        Same.Log(Attempts(Count), store.ReadAll());
        Assert.Equal(damage == "gone" ? 0 : 1, store.Notices.Length);
        Assert.Equal(damage != "gone", Directory.Exists(Data.KeptAside));
        Assert.True(DataCheck.Run(store, new Backups(Data, _time)).IsGood);
    }

    [Fact]
    public void A_database_cut_anywhere_is_made_again_even_if_it_was_not_closed()
    {
        byte[] whole = File.ReadAllBytes(Data.Database);
        for (int length = 100; length < whole.Length; length += 5_003)
        {
            File.WriteAllBytes(Data.Database, whole[..length]);
            File.Delete(Data.LockFile);

            using ProgressStore store = Open();

            Same.Log(Attempts(Count), store.ReadAll());
        }
    }

    [Fact]
    public void With_both_gone_bad_the_newest_good_backup_is_offered()
    {
        var backups = new Backups(Data, _time);
        using (ProgressStore store = Open())
        {
            Assert.True(store.BackUp(backups).IsGood);
        }

        _time.Advance(TimeSpan.FromDays(1));
        File.WriteAllText(Path.Combine(Data.Backups, "2026-03-02-000099.jsonl.gz"), "a damaged newer one");
        Damage(Data.Journal, "zeroed");
        Damage(Data.Database, "zeroed");

        using ProgressStore damaged = Open();

        Assert.Empty(damaged.ReadAll());
        Assert.Equal($"The backup 2026-03-01-000012.jsonl.gz holds {Count} entries more than there are now: bring them back with 'clampwise data restore'.", damaged.Notices[^1]);
        Assert.Equal(Count, DataRestore.Find(backups, null).Then(backup => DataRestore.Run(damaged, backup)).Value.Added);
        Same.Log(Attempts(Count), damaged.ReadAll());
    }

    [Fact]
    public void After_a_restart_of_the_computer_without_a_close_the_database_is_made_anew()
    {
        File.WriteAllText(Data.LockFile, "open another-start-of-the-computer\n");

        using ProgressStore store = Open();

        Assert.StartsWith("The computer stopped while the program was open.", Assert.Single(store.Notices), StringComparison.Ordinal);
        Same.Log(Attempts(Count), store.ReadAll());
    }

    [Fact]
    public void After_a_restart_of_the_computer_what_the_journal_lost_comes_back_from_the_database()
    {
        DamageALine();
        File.WriteAllText(Data.LockFile, "open another-start-of-the-computer\n");

        using ProgressStore store = Open();

        Same.Log(Attempts(Count), store.ReadAll());
        Assert.Contains(store.Notices, notice => notice.StartsWith("1 entry that the journal had lost was brought back", StringComparison.Ordinal));
        Assert.Equal(Count, store.ReadJournalWhole().Entries.Length);
    }

    [Fact]
    public void After_a_restart_of_the_computer_a_database_that_cannot_be_read_is_kept_aside()
    {
        Damage(Data.Database, "zeroed");
        File.WriteAllText(Data.LockFile, "open another-start-of-the-computer\n");

        using ProgressStore store = Open();

        Same.Log(Attempts(Count), store.ReadAll());
        Assert.Single(Directory.GetFiles(Data.KeptAside));
    }

    [Fact]
    public void A_database_that_fails_stays_and_gives_back_at_the_next_start_what_the_journal_lost()
    {
        DamageALine();
        using (StoreLock held = StoreLock.Take(Data.LockFile, BootMark.Read(_time)).Value)
        using (Journal journal = Journal.OpenToWrite(Data.Journal, _ => null).Value)
        {
            List<string> notices = [];
            var rebuild = new DatabaseRebuild(Data, journal, new KeptAside(Data, _time), notices);
            var database = new GuardedDatabase(rebuild, held, EntryDatabase.Open(Data.Database), notices);

            database.Use(_ => throw new IOException("made up"));

            Assert.False(database.IsOpen);
            Assert.StartsWith("The database failed (made up).", Assert.Single(notices), StringComparison.Ordinal);
        }

        using ProgressStore store = Open();

        Same.Log(Attempts(Count), store.ReadAll());
        Assert.Equal(Count, store.ReadJournalWhole().Entries.Length);
    }

    [Fact]
    public void A_rebuild_that_cannot_bring_entries_back_leaves_the_database_closed_and_as_it_was()
    {
        DamageALine();
        Journal journal = Journal.OpenToRead(Data.Journal).Value;
        var rebuild = new DatabaseRebuild(Data, journal, new KeptAside(Data, _time), []);

        EntryDatabase old = EntryDatabase.Open(Data.Database);

        Assert.False(rebuild.Run(old).IsGood);

        Assert.ThrowsAny<Exception>(() => old.Count());
        using EntryDatabase again = EntryDatabase.Open(Data.Database);
        Same.Log(Attempts(Count), again.All());
    }

    [Fact]
    public void A_rebuild_without_room_leaves_the_old_database_and_the_next_start_makes_it_anew()
    {
        DamageALine();
        string inTheWay = Path.Combine(Data.Root, "rebuild.db");
        Directory.CreateDirectory(inTheWay);
        File.WriteAllText(Data.LockFile, "open another-start-of-the-computer\n");
        using (ProgressStore store = Open())
        {
            Assert.Contains(store.Notices, notice => notice.StartsWith("The database cannot be made", StringComparison.Ordinal));
            Same.Log(Attempts(Count), store.ReadAll());
            Assert.True(File.Exists(Data.Database));
            Assert.Null(store.Append(Some.Attempt(Count)));
        }

        Directory.Delete(inTheWay);
        using ProgressStore again = Open();

        Same.Log(Attempts(Count + 1), again.ReadAll());
        Assert.Equal(Count + 1, DataCheck.Run(again, new Backups(Data, _time)).DatabaseEntries);
    }

    [Fact]
    public void A_damaged_line_that_the_start_does_not_see_is_found_by_the_check()
    {
        DamageALine();
        using ProgressStore store = Open();
        Assert.Empty(store.Notices);

        CheckReport report = DataCheck.Run(store, new Backups(Data, _time));

        Assert.Equal((Count - 1, Count), (report.JournalEntries, report.DatabaseEntries));
        Assert.Equal(2, report.Problems.Length);
        Assert.Contains("the line is damaged", report.Problems[0], StringComparison.Ordinal);
        Assert.Contains("1 that only it has. 'clampwise data rebuild' makes it anew", report.Problems[1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_that_cannot_be_written_to_is_read_and_the_reason_is_said()
    {
        File.Delete(Data.LockFile);
        Directory.CreateDirectory(Data.LockFile);

        using ProgressStore store = Open();

        Assert.True(store.IsReadOnly);
        Assert.Contains("cannot be written to, so answers are not kept", Assert.Single(store.Notices), StringComparison.Ordinal);
        Same.Log(Attempts(Count), store.ReadAll());
        Assert.NotNull(store.Append(Some.Attempt(Count)));
    }

    [Fact]
    public void A_folder_that_cannot_be_made_gives_an_empty_store_to_read()
    {
        string file = Path.Combine(_scratch.Root, "file");
        File.WriteAllText(file, "");

        using ProgressStore store = ProgressStore.Open(new DataFolder(Path.Combine(file, "data")), _time).Value;

        Assert.True(store.IsReadOnly);
        Assert.Empty(store.ReadAll());
        Assert.Equal(0, store.LoadMemory(FsrsSettings.Usual).AttemptCount);
    }

    private static IEnumerable<Attempt> Attempts(int count) => Enumerable.Range(0, count).Select(number => Some.Attempt(number));

    private ProgressStore Open() => ProgressStore.Open(Data, _time).Value;

    private void DamageALine()
    {
        byte[] bytes = File.ReadAllBytes(Data.Journal);
        bytes[bytes.Length / 2] ^= 0x01;
        File.WriteAllBytes(Data.Journal, bytes);
    }

    private static void Damage(string path, string damage)
    {
        switch (damage)
        {
            case "zeroed":
                File.WriteAllBytes(path, new byte[new FileInfo(path).Length]);
                break;
            case "foreign":
                File.WriteAllText(path, string.Concat(Enumerable.Repeat("A shopping list: strings, picks, a new strap.\n", 900)), Encoding.UTF8);
                break;
            case "empty":
                File.WriteAllBytes(path, []);
                break;
            default:
                File.Delete(path);
                break;
        }
    }
}
