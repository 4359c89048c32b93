namespace Clampwise.Storage;

/// <summary>
/// How far something follows the journal: so many bytes, the last line of which bears this checksum. If the journal still has that
/// line in that place, everything before it can be taken for unchanged.
/// </summary>
/// <param name="Bytes">Bytes of whole lines; 0 for none.</param>
/// <param name="Crc">The checksum of the last of these lines as it stands in the file; empty for none.</param>
internal sealed record JournalMark(long Bytes, string Crc)
{
    /// <summary>The mark of an empty journal.</summary>
    public static JournalMark Start { get; } = new(0, "");
}
