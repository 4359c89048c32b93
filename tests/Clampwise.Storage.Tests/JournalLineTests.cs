using System.Text;
using Clampwise.Practice;
using CsCheck;

namespace Clampwise.Storage.Tests;

public class JournalLineTests
{
    [Fact]
    public void Every_entry_reads_back_as_it_was() => Some.Entry.Holds(entry =>
    {
        byte[] line = JournalLine.Encode(entry);
        Assert.Equal((byte)'\n', line[^1]);
        Assert.DoesNotContain((byte)'\n', line[..^1]);
        Same.Entry(entry, JournalLine.Decode(line.AsMemory(0, line.Length - 1), new EntryReader()).Value);
    });

    // The expected checksum was worked out with another program: Python's zlib.crc32 over the text after the first comma.
    [Fact]
    public void A_line_looks_like_this()
    {
        var entry = new GradeOverruled(new EntryId(new Guid("00112233445566778899aabbccddeeff")), Some.Start, new EntryId(new Guid("ffeeddccbbaa99887766554433221100")), Grade.Instant);

        Assert.Equal(
            """{"crc":"462f1985","v":1,"kind":"overruled","id":"00112233445566778899aabbccddeeff","at":"2026-03-01T18:00:00Z","attempt":"ffeeddccbbaa99887766554433221100","grade":"instant"}""" + "\n",
            Encoding.UTF8.GetString(JournalLine.Encode(entry)));
    }

    [Fact]
    public void Whatever_byte_is_changed_the_line_is_known_to_be_damaged()
    {
        byte[] line = JournalLine.Encode(Some.Attempt(1))[..^1];
        for (int i = 0; i < line.Length; i++)
        {
            byte[] damaged = [.. line];
            damaged[i] ^= 0x20;
            Assert.False(JournalLine.IsSound(damaged), $"byte {i}");
            Assert.False(JournalLine.IsSound(line.AsSpan(0, i)), $"cut at {i}");
        }

        Assert.True(JournalLine.IsSound(line));
    }

    [Theory]
    [InlineData("", "does not read as JSON")]
    [InlineData("[]", "expected a JSON object")]
    [InlineData("{", "does not read as JSON")]
    [InlineData("{}", "the field 'v' is missing")]
    [InlineData("""{"v":1,"kind":"attempt","id":"x","at":"2026-01-01T00:00:00Z"}""", "the field 'id' holds something that does not belong there")]
    [InlineData("""{"v":1,"kind":"withdrawn","id":"00112233445566778899aabbccddeeff","at":"2026-01-01T00:00:00Z"}""", "the field 'attempt' is missing")]
    [InlineData("""{"v":1,"kind":"wish","id":"00112233445566778899aabbccddeeff","at":"2026-01-01T00:00:00Z"}""", "there is no 'wish' here: expected one of attempt, overruled")]
    [InlineData("""{"v":9,"kind":"wish","id":"00112233445566778899aabbccddeeff","at":"2026-01-01T00:00:00Z"}""", "written in version 9 by a newer program")]
    public void What_is_wrong_with_a_line_is_said(string line, string expected) =>
        Assert.Contains(expected, JournalLine.Decode(Encoding.UTF8.GetBytes(line), new EntryReader(), mayLackCrc: true).Fault.Message, StringComparison.Ordinal);

    [Fact]
    public void A_line_without_checksum_is_taken_only_where_it_may_lack_it()
    {
        byte[] bare = JournalLine.Json(Some.Attempt(1));

        Assert.Equal("the line is damaged: its checksum is missing or does not fit", JournalLine.Decode(bare, new EntryReader()).Fault.Message);
        Same.Entry(Some.Attempt(1), JournalLine.Decode(bare, new EntryReader(), mayLackCrc: true).Value);
    }

    // Files outlive a renaming in the code: these words must never change.
    [Fact]
    public void The_words_in_files_are_pinned()
    {
        Assert.Equal(["missed", "strained", "steady", "instant"], Codes<Grade>.All);
        Assert.Equal(["daily", "quiz", "weak"], Codes<SessionKind>.All);
        Assert.Equal(["not-now", "hand-needs-rest", "no-instrument", "cannot-listen", "looks-wrong"], Codes<SkipReason>.All);
        Assert.Equal(["other", "major", "minor", "power", "suspended", "added", "dominant", "minor-seventh", "major-seventh", "diminished", "augmented"], Codes<ChordFamily>.All);
        Assert.Equal(["attempt", "overruled", "withdrawn", "skipped", "session-ended", "weights", "tuning-heard"], EntryKinds.All);
        Assert.Equal("at kind day item setup expected answer right grade thinkingMs hints choices unknown primed confusedWith partner family foreseen drill session shownMs attempt reason way practisedMs cutShort weights why string cents stringRight id v", string.Join(' ', Fields.All.Select(field => field.Name)));
    }
}
