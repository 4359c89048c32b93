using Clampwise.Practice;
using Clampwise.Storage.Harness;

namespace Clampwise.Storage.Tests;

/// <summary>
/// Processes killed while they practise, and disks that are full. The number of kills is small here; <c>tests/kill-test.sh</c> runs
/// the same test with as many as it is told.
/// </summary>
public sealed class SuddenEndTests : IDisposable
{
    private const int AnswersEach = 40;
    private static readonly int s_kills = int.Parse(Environment.GetEnvironmentVariable("CLAMPWISE_KILLS") ?? "6");
    private readonly ScratchFolder _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [LinuxFact]
    public void Killed_at_any_moment_the_next_start_has_every_answer_that_had_its_verdict()
    {
        var random = new Random(20260301);
        var kept = new SortedSet<int>();
        for (int kill = 0; kill < s_kills; kill++)
        {
            int first = kill * AnswersEach;
            using var child = new Practising(_scratch.Data, first, AnswersEach);
            // Some while it opens, most while it answers, some after it has closed.
            kept.UnionWith(child.KillAfter(random.Next(-1, AnswersEach + 5), TimeSpan.FromMilliseconds(random.Next(60, 900))));

            using ProgressStore store = ProgressStore.Open(_scratch.Data, TimeProvider.System).Value;
            AssertWhole(store, kept, $"kill {kill}");
        }
    }

    // A file size limit makes the kernel refuse writes with EFBIG in the middle of a line, as a full disk does with ENOSPC.
    [LinuxTheory]
    [InlineData(3)]
    [InlineData(20)]
    [InlineData(60)]
    public void On_a_full_disk_each_answer_is_kept_whole_or_refused(int fileBlocks)
    {
        using var child = new Practising(_scratch.Data, 0, 200, fileBlocks);
        (int exit, string[] lines) = child.ToEnd();

        Assert.Equal(0, exit);
        Assert.Contains(lines, line => line.StartsWith("fault ", StringComparison.Ordinal) && line.Contains("could not be written", StringComparison.Ordinal));
        using ProgressStore store = ProgressStore.Open(_scratch.Data, TimeProvider.System).Value;
        var kept = new SortedSet<int>(lines.Where(line => line.StartsWith("kept ", StringComparison.Ordinal)).Select(line => int.Parse(line[5..])));
        AssertWhole(store, kept, "full disk");
        Assert.Equal(kept, store.ReadAll().Select(entry => Answers.NumberOf(entry.Id)).Order());
        Assert.Null(store.Append(Answers.Of(9999)));
    }

    private static void AssertWhole(ProgressStore store, SortedSet<int> kept, string when)
    {
        Assert.False(store.IsReadOnly, $"{when}: {string.Join(' ', store.Notices)}");
        IReadOnlyList<LogEntry> entries = store.ReadAll();
        Dictionary<int, LogEntry> found = entries.ToDictionary(entry => Answers.NumberOf(entry.Id));
        Assert.All(kept, number => Assert.True(found.ContainsKey(number), $"{when}: answer {number} was lost"));
        Assert.All(found, pair => Assert.Equal(Answers.Of(pair.Key), pair.Value));
        Same.Memory(MemoryState.Rebuild(entries, FsrsSettings.Usual), store.LoadMemory(FsrsSettings.Usual));
        CheckReport report = DataCheck.Run(store, new Backups(store.Folder, TimeProvider.System));
        Assert.True(report.IsGood, $"{when}: {string.Join(' ', report.Problems)}");
        Assert.Equal(entries.Count, report.DatabaseEntries);
    }
}
