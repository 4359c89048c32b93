using System.Text;
using Clampwise.Practice;
using CsCheck;
using Microsoft.Extensions.Time.Testing;

namespace Clampwise.Storage.Tests;

/// <summary>Export, import, merge, backups, upgrades, and the session that was left.</summary>
public sealed class DataToolsTests : IDisposable
{
    private readonly ScratchFolder _scratch = new();
    private readonly FakeTimeProvider _time = new(Some.Start);

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public void What_is_exported_is_imported_elsewhere_as_it_was() => Some.Entry.Array[30].Holds(
        entries =>
        {
            using var elsewhere = new ScratchFolder();
            using var stream = new MemoryStream();
            LogExport.WriteJsonLines(entries, stream);
            stream.Position = 0;

            using ProgressStore store = ProgressStore.Open(elsewhere.Data, _time).Value;
            ImportReport report = LogImport.Stream(store, stream, "export", Assert.Null).Value;

            Assert.Equal(0, report.Bad);
            Assert.Equal((entries.Length, entries.Length), (report.Read, report.Added));
            Same.Log(entries, store.ReadAll());
        },
        count: 8);

    [Fact]
    public void Of_a_file_with_broken_lines_all_good_ones_are_taken_and_the_bad_ones_are_listed()
    {
        byte[] damaged = JournalLine.Encode(Some.Attempt(3));
        damaged[60] ^= 1;
        using var stream = new MemoryStream();
        stream.Write(JournalLine.Encode(Some.Attempt(1)));
        stream.Write("this is no JSON\r\n\r\n"u8);
        stream.Write(JournalLine.Json(Some.Attempt(2)));
        stream.Write("\r\n"u8);
        stream.Write(damaged);
        stream.Write("{\"v\":1,\"kind\":\"attempt\"}\n"u8);
        stream.Write(JournalLine.Encode(Some.Attempt(4)).AsSpan()[..^1]);
        stream.Position = 0;

        using ProgressStore store = Open("a");
        List<FileFault> bad = [];
        ImportReport report = LogImport.Stream(store, stream, "from-a-friend.jsonl", bad.Add).Value;

        Assert.Equal(3, report.Added);
        Same.Log([Some.Attempt(1), Some.Attempt(2), Some.Attempt(4)], store.ReadAll());
        Assert.Equal([2, 5, 6], bad.Select(fault => fault.Line));
        Assert.Equal("from-a-friend.jsonl, line 5: the line is damaged: its checksum is missing or does not fit", bad[1].ToString());
        Assert.Equal("from-a-friend.jsonl, line 6: the field 'id' is missing", bad[2].ToString());
    }

    [Fact]
    public void Merged_in_any_order_two_logs_become_the_same()
    {
        LogEntry changed = Some.Attempt(5) with { Answer = "written otherwise", At = Some.Attempt(5).At.AddTicks(-1) };
        LogEntry[][] logs =
        [
            [Some.Attempt(1), Some.Attempt(5), new GradeOverruled(Some.IdOf(800), Some.Start.AddDays(3), Some.Attempt(6).Id, Grade.Missed)],
            [changed, Some.Attempt(6), Some.Attempt(2)],
            [Some.Attempt(2), Some.Attempt(7), new AttemptWithdrawn(Some.IdOf(801), Some.Start.AddDays(3), Some.Attempt(1).Id)],
        ];
        int[][] orders = [[0, 1, 2], [0, 2, 1], [1, 0, 2], [1, 2, 0], [2, 0, 1], [2, 1, 0], [0, 1, 2, 0, 1, 2]];
        for (int i = 0; i < logs.Length; i++)
        {
            using ProgressStore store = Open($"machine-{i}");
            Assert.All(logs[i], entry => Assert.Null(store.Append(entry)));
        }

        List<string> exports = [];
        foreach (int[] order in orders)
        {
            using ProgressStore store = Open("merged-" + string.Concat(order));
            foreach (int machine in order)
            {
                Assert.Equal(0, LogImport.Folder(store, Folder($"machine-{machine}"), Assert.Null).Value.Bad);
                Same.Memory(MemoryState.Rebuild(store.ReadAll(), FsrsSettings.Usual), store.LoadMemory(FsrsSettings.Usual));
            }

            using var export = new MemoryStream();
            LogExport.WriteJsonLines(store.ReadAll(), export);
            exports.Add(Encoding.UTF8.GetString(export.ToArray()));
            Assert.True(DataCheck.Run(store, new Backups(store.Folder, _time)).IsGood);
        }

        Assert.Single(exports.Distinct());
        Assert.Equal(7, exports[0].Count(sign => sign == '\n'));
        Assert.Contains("written otherwise", exports[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Importing_the_same_again_adds_nothing()
    {
        using ProgressStore store = Open("a");
        store.Append(Some.Attempt(1));

        ImportReport report = LogImport.File(store, store.Folder.Journal, Assert.Null).Value;

        Assert.Equal((1, 0), (report.Read, report.Added));
        Assert.Single(File.ReadLines(store.Folder.Journal));
    }

    [Fact]
    public void A_large_import_is_taken_whole()
    {
        using ProgressStore store = Open("a");
        using var stream = new MemoryStream();
        LogExport.WriteJsonLines(Enumerable.Range(0, StoreOpening.FewEntries + 10).Select(number => Some.Attempt(number)), stream);
        stream.Position = 0;

        Assert.Equal(StoreOpening.FewEntries + 10, LogImport.Stream(store, stream, "large", Assert.Null).Value.Added);
        Assert.Equal(StoreOpening.FewEntries + 10, store.ReadAll().Count);
    }

    [Fact]
    public void A_large_import_counts_once_the_journal_has_it_even_if_no_database_can_be_made()
    {
        LogEntry[] entries = [.. Enumerable.Range(0, StoreOpening.FewEntries + 10).Select(number => Some.Attempt(number))];
        Directory.CreateDirectory(Path.Combine(Folder("a").Root, "rebuild.db"));
        using (ProgressStore store = Open("a"))
        {
            Assert.Equal(entries.Length, store.AddAll(entries).Value);

            Assert.StartsWith("The database cannot be made", Assert.Single(store.Notices), StringComparison.Ordinal);
            Same.Log(entries, store.ReadAll());
            Directory.Delete(Path.Combine(store.Folder.Root, "rebuild.db"));
        }

        using ProgressStore again = Open("a");
        Assert.Empty(again.Notices);
        Same.Log(entries, again.ReadAll());
        Assert.True(DataCheck.Run(again, new Backups(again.Folder, _time)).IsGood);
    }

    // RFC 4180: quotes around cells with commas, quotes and line breaks, quotes doubled, CRLF after each row.
    [Fact]
    public void The_table_for_spreadsheets_follows_RFC_4180_and_disarms_formulas()
    {
        using var stream = new MemoryStream();
        LogExport.WriteCsv([Some.Attempt(2) with { Answer = "=1+1" }, Some.Attempt(1) with { Answer = "a \"b\", c\r\nd" }], stream);
        string text = Encoding.UTF8.GetString(stream.ToArray());

        Assert.StartsWith("\uFEFFat,kind,day,item,setup,expected,answer,right,grade,", text, StringComparison.Ordinal);
        Assert.Contains(",Dm7,\"a \"\"b\"\", c\r\nd\",true,steady,", text, StringComparison.Ordinal);
        Assert.Contains(",Dm7,'=1+1,true,steady,", text, StringComparison.Ordinal);
        Assert.True(text.IndexOf("2026-03-01 18:01:00.000,attempt", StringComparison.Ordinal) < text.IndexOf("2026-03-01 18:02:00.000,attempt", StringComparison.Ordinal));
        Assert.EndsWith("\r\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void One_backup_a_day_is_made_and_the_seven_newest_are_kept()
    {
        for (int day = 0; day < 12; day++)
        {
            using (ProgressStore store = Open("a"))
            {
                store.Append(Some.Attempt(day));
            }

            Open("a").Dispose();
            Open("a").Dispose();
            _time.Advance(TimeSpan.FromDays(1));
        }

        var backups = new Backups(Folder("a"), _time);
        Assert.Equal(Enumerable.Range(6, 7).Reverse().Select(day => new DateOnly(2026, 3, day)), backups.All.Select(backup => backup.Date));
        // Each is made at the first start of its day, before anything is answered.
        Assert.Equal(11, backups.NewestGood()?.Entries.Length);
    }

    [Fact]
    public void The_backup_that_holds_most_outlives_the_seven_days()
    {
        using (ProgressStore store = Open("a"))
        {
            Enumerable.Range(0, 20).ToList().ForEach(number => store.Append(Some.Attempt(number)));
            Assert.True(store.BackUp(new Backups(store.Folder, _time)).IsGood);
        }

        Directory.GetFiles(Folder("a").Root).ToList().ForEach(File.Delete);
        for (int day = 1; day < 12; day++)
        {
            _time.Advance(TimeSpan.FromDays(1));
            using (ProgressStore store = Open("a"))
            {
                store.Append(Some.Attempt(100 + day));
            }

            Open("a").Dispose();
        }

        var backups = new Backups(Folder("a"), _time);
        Assert.Equal(20, backups.All[^1].Count);
        Assert.Equal(Backups.Kept + 1, backups.All.Length);
    }

    [Fact]
    public void A_backup_is_found_by_the_beginning_of_its_name_and_a_missing_one_is_named()
    {
        using ProgressStore store = Open("a");
        var backups = new Backups(store.Folder, _time);
        Assert.Equal("there is no backup that can be read", DataRestore.Find(backups, null).Fault.Message);
        Assert.Equal("nothing has been practised yet, so there is nothing to back up", store.BackUp(backups).Fault.Message);
        store.Append(Some.Attempt(1));
        Assert.True(store.BackUp(backups).IsGood);

        Assert.Equal(1, DataRestore.Find(backups, "2026-03-01").Value.Count);
        Assert.Equal("there is no backup '2020': there are 2026-03-01-000001.jsonl.gz", DataRestore.Find(backups, "2020").Fault.Message);
    }

    [Fact]
    public void Entries_of_an_older_version_are_brought_to_the_current_one_step_by_step()
    {
        var upgrades = new EntryUpgrades(
            entry => entry["answer"] = $"{entry["answer"]} then",
            entry => entry["answer"] = $"{entry["answer"]} now");
        byte[] line = JournalLine.Encode(Some.Attempt(1))[..^1];

        var read = (Attempt)JournalLine.Decode(line, new EntryReader(upgrades)).Value;

        Assert.Equal((3, "Dm7 then now"), (read.Schema, read.Answer));
        Assert.Equal(LogEntry.CurrentSchema, EntryUpgrades.Current.Target);
        Assert.Equal(Some.Attempt(1) with { Schema = 3, Answer = "Dm7 then now" }, read);
    }

    [Fact]
    public void The_session_that_was_left_reads_back()
    {
        var session = new SessionSnapshot(
            new SessionId(Some.IdOf(1).Value), SessionKind.Daily, new PracticeDay(739000), TimeSpan.FromMinutes(15), TimeSpan.FromTicks(1234567), 42,
            [new SnapshotItem(Some.Attempt(1).Item, SessionPart.Due)], [new SnapshotItem(Some.Attempt(2).Item, SessionPart.WarmUp)], 1, 8,
            [Some.Attempt(3).Item], [new SnapshotAnswer(Some.IdOf(3), SessionPart.New, null, 2.5), new SnapshotAnswer(Some.IdOf(4), SessionPart.Due, 1.5, 3.5)])
        {
            Title = "Low drone",
        };
        Assert.Null(SessionFile.Load(_scratch.Data));

        Assert.Null(SessionFile.Save(_scratch.Data, session));
        SessionSnapshot loaded = SessionFile.Load(_scratch.Data)!;

        Assert.Equal(session.Queue.AsEnumerable(), loaded.Queue);
        Assert.Equal(session.Close.AsEnumerable(), loaded.Close);
        Assert.Equal(session.Asked.AsEnumerable(), loaded.Asked);
        Assert.Equal(session.Answered.AsEnumerable(), loaded.Answered);
        Assert.Equal(session, loaded with { Queue = session.Queue, Close = session.Close, Asked = session.Asked, Answered = session.Answered });

        File.WriteAllText(_scratch.Data.Session, "{\"v\":1,\"id\":\"no\"}");
        Assert.Null(SessionFile.Load(_scratch.Data));
        SessionFile.Forget(_scratch.Data);
        Assert.False(File.Exists(_scratch.Data.Session));
    }

    [Fact]
    public void Entries_are_found_by_their_ids()
    {
        using ProgressStore store = Open("a");
        store.Append(Some.Attempt(1));
        store.Append(Some.Attempt(2));
        using ProgressStore reading = Open("a");

        Same.Log([Some.Attempt(2)], store.Find([Some.IdOf(2), Some.IdOf(3)]));
        Same.Log([Some.Attempt(2)], reading.Find([Some.IdOf(2), Some.IdOf(3)]));
    }

    private DataFolder Folder(string name) => new(Path.Combine(_scratch.Root, name));

    private ProgressStore Open(string name) => ProgressStore.Open(Folder(name), _time).Value;
}
