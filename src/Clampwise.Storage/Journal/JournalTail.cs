using System.Text;

namespace Clampwise.Storage;

/// <summary>The last sound line of a journal.</summary>
/// <param name="End">Where it ends.</param>
/// <param name="LacksLineFeed">True if the line is whole and only its line feed is missing.</param>
/// <param name="Version">The version that it was written in; 0 if there is none.</param>
internal readonly record struct JournalTail(JournalMark End, bool LacksLineFeed, int Version)
{
    private const int Window = JournalLine.Most;

    /// <summary>
    /// Looks for the last sound line before a place in the file. Damaged lines after it count as torn; if there is no sound line in
    /// the last 256 KiB the whole file does.
    /// </summary>
    public static JournalTail Find(Stream stream, long length)
    {
        int size = (int)Math.Min(Window, length);
        var window = new byte[size];
        stream.Position = length - size;
        stream.ReadExactly(window);

        ReadOnlySpan<byte> rest = window;
        while (rest.Length > 0)
        {
            bool hasLineFeed = rest[^1] == '\n';
            ReadOnlySpan<byte> line = LastLine(rest);
            if (JournalLine.IsSound(line))
            {
                return new JournalTail(new JournalMark(length - size + rest.Length, CrcOf(line)), !hasLineFeed, JournalLine.VersionOf(line));
            }

            rest = rest[..(rest.Length - line.Length - (hasLineFeed ? 1 : 0))];
        }

        return new JournalTail(JournalMark.Start, false, 0);
    }

    /// <summary>The last line of some bytes, without its line feed.</summary>
    public static ReadOnlySpan<byte> LastLine(ReadOnlySpan<byte> bytes)
    {
        ReadOnlySpan<byte> ended = bytes[^1] == '\n' ? bytes[..^1] : bytes;
        return ended[(ended.LastIndexOf((byte)'\n') + 1)..];
    }

    /// <summary>The checksum that stands in a sound line.</summary>
    public static string CrcOf(ReadOnlySpan<byte> line) => Encoding.ASCII.GetString(JournalLine.CrcText(line));
}
