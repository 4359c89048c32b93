
namespace Clampwise.Storage.Tests;

/// <summary>An answer counts as kept only once it is on the disk: what is written is flushed before the journal says so.</summary>
public class JournalFlushTests
{
    [Fact]
    public void Every_line_is_flushed_after_it_is_written_and_before_it_counts()
    {
        using var folder = new ScratchFolder();
        Directory.CreateDirectory(folder.Data.Root);
        var flushed = new List<long>();
        using Journal journal = Journal.OpenToWrite(folder.Data.Journal, _ => null, stream => flushed.Add(stream.Length)).Value;
        byte[] line = JournalLine.Encode(Some.Attempt(1));
        Assert.Null(journal.Append(line));
        Assert.Null(journal.Append(line));
        Assert.Equal([line.Length, 2L * line.Length], flushed);
        Assert.Equal(2L * line.Length, journal.End.Bytes);
    }

    [Fact]
    public void A_line_that_does_not_reach_the_disk_is_not_kept_and_leaves_no_trace()
    {
        using var folder = new ScratchFolder();
        Directory.CreateDirectory(folder.Data.Root);
        bool isFull = false;
        using Journal journal = Journal.OpenToWrite(folder.Data.Journal, _ => null, stream => stream.Flush(isFull ? throw new IOException("no room left on the device") : false)).Value;
        byte[] line = JournalLine.Encode(Some.Attempt(1));
        Assert.Null(journal.Append(line));
        isFull = true;
        Assert.Contains("no room left", journal.Append(line)!.Message);
        Assert.Equal(line.Length, journal.End.Bytes);
        Assert.Equal(line.Length, new FileInfo(folder.Data.Journal).Length);
        isFull = false;
        Assert.Null(journal.Append(line));
        Assert.Equal(2L * line.Length, journal.End.Bytes);
    }
}
