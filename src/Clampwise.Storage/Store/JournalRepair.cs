using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>Opens the journal to write, and deals with what a sudden end or a damaged disk left at its end.</summary>
internal sealed class JournalRepair(DataFolder folder, KeptAside aside, List<string> notices)
{
    private byte[] _torn = [];
    private string _where = "";

    /// <summary>True if the journal was not one any more, so that a backup may hold more.</summary>
    public bool LostSomething { get; private set; }

    /// <summary>Opens and repairs.</summary>
    public Result<Journal> Open()
    {
        Result<Journal> opened = Journal.OpenToWrite(folder.Journal, Keep);
        if (!opened.TryGet(out Journal? journal, out _) || journal.TornBytes == 0)
        {
            return opened;
        }

        if (journal.End == JournalMark.Start && !JournalLine.IsStartOfOne(_torn))
        {
            return Salvage(journal);
        }

        notices.Add(StorageWords.TornEnd(journal.TornBytes, _where));
        return opened;
    }

    private Fault? Keep(byte[] torn)
    {
        if (!aside.Bytes(torn, "journal.jsonl").TryGet(out string? where, out Fault? fault))
        {
            return fault;
        }

        (_torn, _where) = (torn, where);
        return null;
    }

    // No sound line near the end: the first line ever was torn, or the file was damaged, or is none of ours. What can be read is taken over.
    private Result<Journal> Salvage(Journal journal)
    {
        using var sound = new MemoryStream();
        int count = 0;
        var lines = new LineReader(new MemoryStream(_torn));
        while (lines.Next() is { } line)
        {
            if (JournalLine.IsSound(line.Span))
            {
                sound.Write(line.Span);
                sound.WriteByte((byte)'\n');
                count++;
            }
        }

        LostSomething = true;
        notices.Add(StorageWords.JournalKeptAside(_where, count));
        return count > 0 && journal.Append(sound.ToArray()) is { } fault ? fault : journal;
    }
}
