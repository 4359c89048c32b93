using Clampwise.Practice;
using LiteDB;

namespace Clampwise.Storage;

/// <summary>
/// The LiteDB file that everything reads: the entries of the log, and the memory state folded from them. All of it can be made anew
/// from the journal, so a failure here is never a loss: members throw what LiteDB throws, and the store goes back to the journal.
/// </summary>
internal sealed class EntryDatabase : IDisposable
{
    /// <summary>The version of what stands in the file; a file with a lower one is rebuilt, one with a higher one is refused.</summary>
    public const int Schema = 1;

    private const int Batch = 2_000;
    private const string MetaId = "meta";
    private readonly LiteDatabase _database;
    private readonly ILiteCollection<BsonDocument> _entries;
    private readonly ILiteCollection<BsonDocument> _meta;
    private readonly EntryReader _reader = new();
    private TextTable? _texts;

    private EntryDatabase(LiteDatabase database)
    {
        _database = database;
        _entries = database.GetCollection("entries");
        _meta = database.GetCollection("meta");
        BsonDocument? meta = _meta.FindById(MetaId);
        FileSchema = meta is null ? null : meta["schema"].AsInt32;
        Mark = meta is null ? JournalMark.Start : new JournalMark(meta["bytes"].AsInt64, meta["crc"].AsString);
    }

    /// <summary>The version in the file; null if it is new or not ours.</summary>
    public int? FileSchema { get; private set; }

    /// <summary>How far the database follows the journal.</summary>
    public JournalMark Mark { get; private set; }

    private TextTable Texts => _texts ??= new TextTable(_database);

    /// <summary>Opens a file, or makes one.</summary>
    public static EntryDatabase Open(string path)
    {
        // The default collation takes Dm7 and dM7 for the same text.
        var database = new LiteDatabase(new ConnectionString { Filename = path, Connection = ConnectionType.Direct, Collation = Collation.Binary });
        try
        {
            return new EntryDatabase(database);
        }
        catch
        {
            database.Dispose();
            throw;
        }
    }

    /// <summary>True if there is an entry with that id.</summary>
    public bool Contains(EntryId id) => _entries.FindById(id.Value) is not null;

    /// <summary>The entry of an id; null if there is none.</summary>
    public LogEntry? Find(EntryId id) => _entries.FindById(id.Value) is { } document ? Read(document) : null;

    /// <summary>Every entry.</summary>
    public IEnumerable<LogEntry> All() => _entries.FindAll().Select(Read);

    /// <summary>How many entries there are.</summary>
    public int Count() => _entries.Count();

    /// <summary>Adds entries that follow in the journal, and notes how far it is followed now. An entry that is there gives way if the new one wins.</summary>
    public void Add(IEnumerable<LogEntry> entries, JournalMark mark) => InTransaction(() =>
    {
        foreach (LogEntry entry in entries)
        {
            LogEntry? there = Find(entry.Id);
            if (there is null || EntryUnion.Replaces(entry, there))
            {
                BsonDocument document = Write(entry);
                Texts.Store();
                _entries.Upsert(document);
            }
        }

        WriteMeta(mark);
    });

    /// <summary>Fills an empty database.</summary>
    /// <param name="entries">Entries in the order of their ids, each id once: so each goes to the end of the index, which is twice as fast and packs it tighter.</param>
    /// <param name="mark">How far in the journal they reach.</param>
    public void Fill(IEnumerable<LogEntry> entries, JournalMark mark)
    {
        foreach (LogEntry[] batch in Ahead.Of(entries.Chunk(Batch)))
        {
            InTransaction(() =>
            {
                List<BsonDocument> documents = [.. batch.Select(Write)];
                Texts.Store();
                _entries.Insert(documents);
            });
        }

        InTransaction(() => WriteMeta(mark));
        _database.Checkpoint();
    }

    /// <summary>The memory state that was kept; null if there is none.</summary>
    public BsonDocument? ReadMemory() => _meta.FindById(MemoryDocument.Id);

    /// <summary>Keeps a memory state.</summary>
    public void WriteMemory(BsonDocument memory) => InTransaction(() => _meta.Upsert(memory));

    /// <summary>Reads and compiles what adding an entry needs, and changes nothing.</summary>
    public void WarmUp()
    {
        InTransaction(() => WriteMeta(Mark));
        if (_entries.FindOne(Query.All()) is { } document)
        {
            Find(Read(document).Id);
            JournalLine.Encode(Read(document));
            Write(Read(document));
        }
    }

    /// <summary>Forgets the memory state that was kept.</summary>
    public void DeleteMemory() => InTransaction(() => _meta.Delete(MemoryDocument.Id));

    /// <summary>Writes everything into the one file and closes it.</summary>
    public void Dispose() => _database.Dispose();

    private LogEntry Read(BsonDocument document) => _reader.Read(new BsonFieldReader(document, Texts)).Value;

    private BsonDocument Write(LogEntry entry)
    {
        var document = new BsonDocument();
        EntryWriter.Write(new BsonFieldWriter(document, Texts), entry);
        return document;
    }

    private void WriteMeta(JournalMark mark)
    {
        _meta.Upsert(new BsonDocument { ["_id"] = MetaId, ["schema"] = Schema, ["bytes"] = mark.Bytes, ["crc"] = mark.Crc });
        (FileSchema, Mark) = (Schema, mark);
    }

    private void InTransaction(Action work)
    {
        _database.BeginTrans();
        try
        {
            work();
            if (!_database.Commit())
            {
                throw new IOException(StorageWords.TransactionLost);
            }
        }
        catch
        {
            _database.Rollback();
            throw;
        }
    }
}
