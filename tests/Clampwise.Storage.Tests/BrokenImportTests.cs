using System.IO.Compression;
using System.Text;
using System.Text.Json.Nodes;
using CsCheck;
using Microsoft.Extensions.Time.Testing;

namespace Clampwise.Storage.Tests;

/// <summary>Files from elsewhere, broken in every way: each bad line is listed and all good ones are taken.</summary>
public sealed class BrokenImportTests : IDisposable
{
    private static readonly Encoding s_latin = Encoding.Latin1;
    private readonly ScratchFolder _scratch = new();

    public void Dispose() => _scratch.Dispose();

    /// <summary>Lines that cannot be read, each byte of them a character, with words of what is said.</summary>
    public static TheoryData<string, string> Bad => new()
    {
        { "this is no JSON", "does not read as JSON" },
        { "\u0000\u0001\u0002", "does not read as JSON" },
        { Changed("answer", "\"\u00ff\u00fe\""), "is no Unicode text" },
        { Changed("answer", "\"\\ud800\""), "is no Unicode text" },
        { Changed("item", "\"\\udc00\""), "is no Unicode text" },
        { Changed("id", "\"\\ud83c\""), "is no Unicode text" },
        { "{\"\\ud800\":1}", "" },
        { Changed("hints", "1e999"), "'hints' lies out of its bounds" },
        { Changed("hints", "-1"), "'hints' lies out of its bounds" },
        { Changed("hints", "99999999999999999999"), "'hints' lies out of its bounds" },
        { Changed("thinkingMs", "1e28"), "'thinkingMs' lies out of its bounds" },
        { Changed("thinkingMs", "1e400"), "'thinkingMs' lies out of its bounds" },
        { Changed("shownMs", "-99999999999999"), "'shownMs' lies out of its bounds" },
        { Changed("foreseen", "1.5"), "'foreseen' lies out of its bounds" },
        { Changed("foreseen", "1e400"), "'foreseen' lies out of its bounds" },
        { Changed("at", "\"0001-01-01T00:00:00Z\""), "'at' lies out of its bounds" },
        { Changed("at", "\"9999-12-31T23:59:59Z\""), "'at' lies out of its bounds" },
        { Changed("day", "\"9999-12-31\""), "'day' lies out of its bounds" },
        { Changed("answer", $"\"{new string('x', 5000)}\""), "'answer' is longer than 4000 characters" },
        { Changed("answer", "[[[]]]"), "'answer' holds something that does not belong there" },
        { Changed("answer", string.Concat(Enumerable.Repeat("[", 200))), "does not read as JSON" },
        { Changed("v", "1e400"), "'v' is missing" },
        { "{\"v\":1,\"kind\":\"weights\",\"id\":\"00112233445566778899aabbccddeeff\",\"at\":\"2026-01-01T00:00:00Z\",\"weights\":[1e999],\"why\":\"\"}", "'weights' lies out of its bounds" },
        { "{\"v\":1,\"kind\":\"tuning-heard\",\"id\":\"00112233445566778899aabbccddeeff\",\"at\":\"2026-01-01T00:00:00Z\",\"string\":99,\"cents\":1,\"stringRight\":true,\"right\":true}", "'string' lies out of its bounds" },
        { "\ufeff{}"[1..] + new string('x', JournalLine.Most + 1), "the line is longer than 262144 bytes" },
        { "{" + new string(' ', 3 * JournalLine.Most) + "}", "the line is longer than 262144 bytes" },
    };

    [Theory]
    [MemberData(nameof(Bad))]
    public void A_bad_line_among_good_ones_is_listed_and_the_good_ones_are_taken(string line, string words)
    {
        using var stream = new MemoryStream();
        stream.Write(JournalLine.Encode(Some.Attempt(1)));
        stream.Write(s_latin.GetBytes(line));
        stream.WriteByte((byte)'\n');
        stream.Write(JournalLine.Json(Some.Attempt(2)));
        stream.Position = 0;
        using ProgressStore store = Open();
        List<FileFault> bad = [];

        ImportReport report = LogImport.Stream(store, stream, "broken.jsonl", bad.Add).Value;

        FileFault fault = Assert.Single(bad);
        Assert.Equal(2, fault.Line);
        Assert.Contains(words, fault.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("LineNumber", fault.Message, StringComparison.Ordinal);
        Assert.Equal(new ImportReport(2, 2, 1), report);
        Same.Log([Some.Attempt(1), Some.Attempt(2)], store.ReadAll());
    }

    [Fact]
    public void Whatever_is_mixed_all_good_lines_are_taken_and_every_bad_one_is_listed()
    {
        string[] kinds = [.. Bad.Select(row => (string)row[0])];
        Gen<int[]> lines = Gen.Int[-1, kinds.Length - 1].Array[1, 40];
        Gen.Select(lines, Gen.Bool, Gen.Bool, Gen.Bool).Select((which, hasMark, hasReturns, isZipped) => (which, hasMark, hasReturns, isZipped)).Holds(
            made =>
            {
                using var bytes = new MemoryStream();
                bytes.Write(made.hasMark ? [0xEF, 0xBB, 0xBF] : (ReadOnlySpan<byte>)[]);
                for (int at = 0; at < made.which.Length; at++)
                {
                    bytes.Write(made.which[at] < 0 ? JournalLine.Encode(Some.Attempt(at)).AsSpan()[..^1] : s_latin.GetBytes(kinds[made.which[at]]));
                    bytes.Write(made.hasReturns ? "\r\n"u8 : "\n"u8);
                }

                using var folder = new ScratchFolder();
                string path = Path.Combine(Directory.CreateDirectory(folder.Data.Root).FullName, "mixed.jsonl");
                File.WriteAllBytes(path, made.isZipped ? Zipped(bytes.ToArray()) : bytes.ToArray());
                using ProgressStore store = ProgressStore.Open(folder.Data, new FakeTimeProvider()).Value;
                List<int> bad = [];

                ImportReport report = LogImport.File(store, path, fault => bad.Add(fault.Line)).Value;

                Assert.Equal(made.which.Index().Where(one => one.Item >= 0).Select(one => one.Index + 1), bad);
                Assert.Equal(made.which.Count(one => one < 0), report.Added);
                Same.Log(made.which.Index().Where(one => one.Item < 0).Select(one => Some.Attempt(one.Index)), store.ReadAll());
            },
            count: 12);
    }

    [Fact]
    public void What_is_before_a_place_that_cannot_be_decompressed_is_taken_and_the_place_is_listed()
    {
        byte[] zipped = Zipped([.. Enumerable.Range(0, 400).SelectMany(number => JournalLine.Encode(Some.Attempt(number)))]);
        string path = Path.Combine(_scratch.Data.Root, "cut.jsonl.gz");
        Directory.CreateDirectory(_scratch.Data.Root);
        File.WriteAllBytes(path, [.. zipped[..(zipped.Length / 2)], .. new byte[100]]);
        using ProgressStore store = Open();
        List<FileFault> bad = [];

        ImportReport report = LogImport.File(store, path, bad.Add).Value;

        Assert.InRange(report.Added, 50, 399);
        Assert.Contains("cannot be read from here on", bad[^1].Message, StringComparison.Ordinal);
        Assert.Equal(report.Added, store.ReadAll().Count);
    }

    [Fact]
    public void Bounds_hold_for_what_is_in_the_journal_already()
    {
        using (ProgressStore store = Open())
        {
            store.Append(Some.Attempt(1));
            store.Append(Some.Attempt(2) with { Hints = 2_000_000 });
        }

        File.Delete(_scratch.Data.Database);
        using ProgressStore again = Open();
        Same.Log([Some.Attempt(1)], again.ReadAll());
        Assert.Contains("line 2: the field 'hints' lies out of its bounds, 0 to 1000", string.Join(' ', DataCheck.Run(again, new Backups(again.Folder, new FakeTimeProvider())).Problems), StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_without_an_end_costs_no_more_room_than_the_longest_line()
    {
        using ProgressStore store = Open();
        using var stream = new Endless(64 << 20);
        long before = GC.GetAllocatedBytesForCurrentThread();

        ImportReport report = LogImport.Stream(store, stream, "endless", _ => { }).Value;

        Assert.Equal(new ImportReport(0, 0, 1), report);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 8 << 20);
    }

    [Fact]
    public void A_long_file_says_how_far_it_is()
    {
        string path = Path.Combine(_scratch.Data.Root, "long.jsonl");
        Directory.CreateDirectory(_scratch.Data.Root);
        byte[] line = JournalLine.Encode(Some.Attempt(1));
        using (FileStream file = File.Create(path))
        {
            for (int number = 0; number < (10 << 20) / line.Length; number++)
            {
                file.Write(line);
            }
        }

        using ProgressStore store = Open();
        List<ImportProgress> told = [];
        Assert.Equal(1, LogImport.File(store, path, Assert.Null, told.Add).Value.Added);
        Assert.Equal(Enumerable.Range(1, 10).Select(tenth => tenth * 10), told.Select(one => one.Percent));
        Assert.Equal(told.Select(one => one.Read).Order(), told.Select(one => one.Read));
    }

    private ProgressStore Open() => ProgressStore.Open(_scratch.Data, new FakeTimeProvider()).Value;

    private static string Changed(string field, string json)
    {
        JsonObject entry = JsonNode.Parse(JournalLine.Json(Some.Attempt(9)))!.AsObject();
        entry[field] = "\u0001";
        return s_latin.GetString(Encoding.UTF8.GetBytes(entry.ToJsonString())).Replace("\"\\u0001\"", json, StringComparison.Ordinal);
    }

    private static byte[] Zipped(byte[] bytes)
    {
        using var zipped = new MemoryStream();
        using (var zip = new GZipStream(zipped, CompressionLevel.Fastest))
        {
            zip.Write(bytes);
        }

        return zipped.ToArray();
    }

    // So many bytes without a line feed.
    private sealed class Endless(long length) : MemoryStream
    {
        private long _left = length;

        public override int Read(byte[] buffer, int offset, int count)
        {
            int read = (int)Math.Min(count, _left);
            Array.Fill(buffer, (byte)'x', offset, read);
            _left -= read;
            return read;
        }
    }
}
