using LiteDB;

namespace Clampwise.Storage;

/// <summary>Texts that come back over and over in the log, each stored once under a number.</summary>
internal sealed class TextTable
{
    private readonly ILiteCollection<BsonDocument> _collection;
    private readonly Dictionary<string, int> _numbers = new(StringComparer.Ordinal);
    private readonly List<string> _texts = [];
    private int _stored;

    /// <summary>Reads all texts of a database.</summary>
    public TextTable(ILiteDatabase database)
    {
        _collection = database.GetCollection("texts");
        foreach (BsonDocument document in _collection.FindAll())
        {
            Add(document["x"].AsString);
        }

        _stored = _texts.Count;
    }

    /// <summary>The text of a number; null if there is none.</summary>
    public string? TextOf(int number) => number >= 0 && number < _texts.Count ? _texts[number] : null;

    /// <summary>The number of a text; a new one if need be, which is stored by <see cref="Store"/>.</summary>
    public int NumberOf(string text) => _numbers.TryGetValue(text, out int number) ? number : Add(text);

    /// <summary>Stores the new texts. Belongs into the transaction that stores what uses them.</summary>
    public void Store()
    {
        if (_stored < _texts.Count)
        {
            _collection.Insert(Enumerable.Range(_stored, _texts.Count - _stored).Select(number => new BsonDocument { ["_id"] = number, ["x"] = _texts[number] }).ToList());
            _stored = _texts.Count;
        }
    }

    private int Add(string text)
    {
        _texts.Add(text);
        return _numbers[text] = _texts.Count - 1;
    }
}
