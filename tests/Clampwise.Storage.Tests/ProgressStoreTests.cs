using Clampwise.Practice;
using Clampwise.Theory;
using CsCheck;
using LiteDB;
using Microsoft.Extensions.Time.Testing;

namespace Clampwise.Storage.Tests;

public sealed class ProgressStoreTests : IDisposable
{
    private readonly ScratchFolder _scratch = new();
    private readonly FakeTimeProvider _time = new(Some.Start);

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public void What_was_kept_is_there_at_the_next_start() => Some.Entry.Array[60].Holds(entries =>
    {
        using var scratch = new ScratchFolder();
        using (ProgressStore store = ProgressStore.Open(scratch.Data, _time).Value)
        {
            Assert.False(store.IsReadOnly);
            Assert.All(entries, entry => Assert.Null(store.Append(entry)));
            Same.Log(entries, store.ReadAll());
        }

        using ProgressStore again = ProgressStore.Open(scratch.Data, _time).Value;
        Assert.Empty(again.Notices);
        Same.Log(entries, again.ReadAll());
    }, count: 8);

    [Fact]
    public void The_same_answer_twice_counts_once()
    {
        using ProgressStore store = Open();

        Assert.Null(store.Append(Some.Attempt(1)));
        Assert.Null(store.Append(Some.Attempt(1)));
        Assert.Null(store.Append(Some.Attempt(1) with { Answer = "something else" }));

        Assert.Equal("Dm7", Assert.IsType<Attempt>(Assert.Single(store.ReadAll())).Answer);
        Assert.Single(File.ReadLines(_scratch.Data.Journal));
    }

    [Fact]
    public void Names_that_differ_only_in_case_stay_apart()
    {
        using (ProgressStore store = Open())
        {
            store.Append(Some.Attempt(1) with { Answer = "Dm7" });
            store.Append(Some.Attempt(2) with { Answer = "dM7" });
        }

        using ProgressStore again = Open();
        Assert.Equal(["Dm7", "dM7"], again.ReadAll().Cast<Attempt>().OrderBy(attempt => attempt.At).Select(attempt => attempt.Answer));
    }

    [Fact]
    public void An_answer_is_on_the_disk_before_Append_returns()
    {
        using ProgressStore store = Open();
        for (int i = 0; i < 5; i++)
        {
            store.Append(Some.Attempt(i));
            using var file = new FileStream(_scratch.Data.Journal, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            Assert.Equal(i + 1, Journal.ReadLines(file, new EntryReader()).Count(record => record.Entry.IsGood));
        }
    }

    [Fact]
    public void A_second_one_says_so_and_reads_only()
    {
        using ProgressStore first = Open();
        first.Append(Some.Attempt(1));

        using (ProgressStore second = Open())
        {
            Assert.True(second.IsReadOnly);
            Assert.Contains("in use by another copy of the program", Assert.Single(second.Notices), StringComparison.Ordinal);
            Same.Log([Some.Attempt(1)], second.ReadAll());
            Assert.Equal("the data folder is open to read only, so nothing is kept", second.Append(Some.Attempt(2))?.Message);
            Same.Memory(first.LoadMemory(FsrsSettings.Usual), second.LoadMemory(FsrsSettings.Usual));
        }

        Assert.Null(first.Append(Some.Attempt(3)));
        Same.Log([Some.Attempt(1), Some.Attempt(3)], first.ReadAll());
    }

    [Fact]
    public void The_folder_is_free_again_after_the_first_one_has_gone()
    {
        Open().Dispose();

        using ProgressStore second = Open();
        Assert.False(second.IsReadOnly);
    }

    [Fact]
    public void The_memory_that_is_loaded_equals_the_one_rebuilt_from_the_log()
    {
        var random = new Random(7);
        for (int run = 0; run < 4; run++)
        {
            using ProgressStore store = Open();
            Same.Memory(MemoryState.Rebuild(store.ReadAll(), FsrsSettings.Usual), store.LoadMemory(FsrsSettings.Usual));
            for (int i = 0; i < 300; i++)
            {
                store.Append(Some.Attempt((run * 300) + i, (Grade)random.Next(1, 5)));
            }

            Same.Memory(MemoryState.Rebuild(store.ReadAll(), FsrsSettings.Usual), store.LoadMemory(FsrsSettings.Usual));
        }
    }

    // A field that is added to the state must be kept too, or this test says so.
    [Fact]
    public void Every_part_of_a_memory_state_is_kept() => Assert.Equal(
        ["AttemptCount", "Before", "Confusions", "Correction", "FirstAnswers", "Items", "LatestAt", "Model", "Skills", "UsualRound", "UsualTimes"],
        typeof(MemoryState).GetProperties().Select(property => property.Name).Order(StringComparer.Ordinal));

    [Fact]
    public void What_reaches_back_into_a_kept_memory_is_taken_into_account()
    {
        var other = new FsrsSettings(countsSameDay: false);
        Attempt[] attempts = [.. Enumerable.Range(0, 40).Select(number => Some.Attempt(number))];
        LogEntry[] reachingBack =
        [
            new GradeOverruled(Some.IdOf(901), Some.Start.AddDays(2), attempts[3].Id, Grade.Missed),
            new AttemptWithdrawn(Some.IdOf(902), Some.Start.AddDays(2), attempts[4].Id),
            new WeightsChosen(Some.IdOf(903), Some.Start.AddDays(2), [.. FsrsWeights.Lowest], "as a test"),
            Some.Attempt(905) with { At = Some.Start.AddDays(-1), AskedAt = Some.Start.AddDays(-1) },
        ];
        foreach (LogEntry back in reachingBack)
        {
            using ProgressStore store = Open();
            foreach (Attempt attempt in attempts)
            {
                store.Append(attempt);
            }

            Same.Memory(MemoryState.Rebuild(store.ReadAll(), FsrsSettings.Usual), store.LoadMemory(FsrsSettings.Usual));
            store.Append(back);
            Same.Memory(MemoryState.Rebuild(store.ReadAll(), FsrsSettings.Usual), store.LoadMemory(FsrsSettings.Usual));
            Same.Memory(MemoryState.Rebuild(store.ReadAll(), other), store.LoadMemory(other));
        }
    }

    [Fact]
    public void A_grade_overruled_in_the_same_stretch_needs_no_rebuild_and_counts()
    {
        using ProgressStore store = Open();
        store.Append(Some.Attempt(1));
        store.LoadMemory(FsrsSettings.Usual);
        store.Append(Some.Attempt(2));
        store.Append(new GradeOverruled(Some.IdOf(900), Some.Start.AddDays(1), Some.Attempt(2).Id, Grade.Missed));

        MemoryState loaded = store.LoadMemory(FsrsSettings.Usual);

        Assert.Equal(Grade.Missed, loaded.Items[Some.Attempt(2).Item].LastGrade);
        Same.Memory(MemoryState.Rebuild(store.ReadAll(), FsrsSettings.Usual), loaded);
    }

    [Fact]
    public void A_database_that_is_gone_is_made_anew_from_the_journal()
    {
        Fill(50);
        File.Delete(_scratch.Data.Database);

        using ProgressStore store = Open();

        Assert.Equal(50, store.ReadAll().Count);
        Assert.True(File.Exists(_scratch.Data.Database));
    }

    [Fact]
    public void A_database_that_is_behind_catches_up()
    {
        Fill(20);
        File.Copy(_scratch.Data.Database, _scratch.Data.Database + ".old");
        Fill(10, from: 20);
        File.Move(_scratch.Data.Database + ".old", _scratch.Data.Database, overwrite: true);
        File.Delete(_scratch.Data.LockFile);

        using ProgressStore store = Open();

        Same.Log(Enumerable.Range(0, 30).Select(number => Some.Attempt(number)), store.ReadAll());
    }

    [Fact]
    public void Rebuild_makes_the_same_database_again()
    {
        Fill(50);
        using ProgressStore store = Open();
        IReadOnlyList<LogEntry> before = store.ReadAll();

        Assert.Equal(50, store.Rebuild().Value);

        Same.Log(before, store.ReadAll());
        Assert.Null(store.Append(Some.Attempt(77)));
        Assert.Equal(51, store.ReadAll().Count);
    }

    [Fact]
    public void A_folder_of_a_newer_version_is_refused_and_left_alone()
    {
        Fill(3);
        byte[] journal = File.ReadAllBytes(_scratch.Data.Journal);
        File.AppendAllText(_scratch.Data.Journal, Newer());
        byte[] newer = File.ReadAllBytes(_scratch.Data.Journal);

        Fault fault = ProgressStore.Open(_scratch.Data, _time).Fault;

        Assert.Contains("was written by a newer version of the program", fault.Message, StringComparison.Ordinal);
        Assert.Equal(newer, File.ReadAllBytes(_scratch.Data.Journal));
        Assert.True(newer.Length > journal.Length);

        static string Newer() => System.Text.Encoding.UTF8.GetString(JournalLine.Encode(Some.Attempt(4) with { Schema = LogEntry.CurrentSchema + 1 }));
    }

    [Fact]
    public void Before_a_migration_a_backup_is_made_that_is_never_deleted()
    {
        Fill(3);

        new StoreOpening(_scratch.Data, _time, version: 2).Run().Value.Dispose();

        Backup backup = Assert.Single(new Backups(_scratch.Data, _time).All, backup => backup.Tag is not null);
        Assert.Equal(("v1", 3, "2026-03-01-000003-v1.jsonl.gz"), (backup.Tag, backup.Count, backup.Name));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(99)]
    public void A_database_of_an_older_version_is_made_anew_and_one_of_a_newer_version_refused(int schema)
    {
        Fill(3);
        using (var database = new LiteDatabase(_scratch.Data.Database))
        {
            BsonDocument meta = database.GetCollection("meta").FindById("meta");
            meta["schema"] = schema;
            database.GetCollection("meta").Update(meta);
        }

        File.Delete(_scratch.Data.LockFile);
        byte[] before = File.ReadAllBytes(_scratch.Data.Journal);
        Result<ProgressStore> opened = ProgressStore.Open(_scratch.Data, _time);

        Assert.Equal(schema == 0, opened.IsGood);
        Assert.Equal(before, File.ReadAllBytes(_scratch.Data.Journal));
        if (opened.IsGood)
        {
            Assert.Empty(opened.Value.Notices);
            Assert.Equal(3, opened.Value.ReadAll().Count);
            opened.Value.Dispose();
        }
        else
        {
            Assert.Contains("was written by a newer version of the program", opened.Fault.Message, StringComparison.Ordinal);
        }
    }

    private ProgressStore Open() => ProgressStore.Open(_scratch.Data, _time).Value;

    private void Fill(int count, int from = 0)
    {
        using ProgressStore store = Open();
        for (int i = from; i < from + count; i++)
        {
            Assert.Null(store.Append(Some.Attempt(i)));
        }
    }
}
