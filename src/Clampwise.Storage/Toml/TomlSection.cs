using Clampwise.Theory;
using Tomlyn.Syntax;

namespace Clampwise.Storage;

/// <summary>The entries of one table of a TOML file. What is wrong with them is added to a list, with its place, so that all faults show at once.</summary>
internal sealed class TomlSection
{
    private readonly string _file;
    private readonly List<FileFault> _faults;
    private readonly SyntaxNode _start;
    private readonly Dictionary<string, KeyValueSyntax> _entries = [];

    /// <param name="file">The file's name, for faults.</param>
    /// <param name="start">Where the table starts: the place of what is missing.</param>
    /// <param name="entries">Its entries.</param>
    /// <param name="known">The keys that may stand here; any other is a fault.</param>
    /// <param name="faults">Where faults go.</param>
    public TomlSection(string file, SyntaxNode start, IEnumerable<KeyValueSyntax> entries, IReadOnlyCollection<string> known, List<FileFault> faults)
    {
        (_file, _start, _faults) = (file, start, faults);
        foreach (KeyValueSyntax entry in entries)
        {
            string key = entry.Key?.ToString().Trim() ?? "";
            if (known.Contains(key))
            {
                _entries[key] = entry;
            }
            else
            {
                Report(entry, StorageWords.UnknownKey(key, known));
            }
        }
    }

    /// <summary>A text; null if it is missing or no text, which is reported.</summary>
    public string? Required(string key)
    {
        if (!_entries.TryGetValue(key, out KeyValueSyntax? entry))
        {
            return Missing(_start, key);
        }

        string? text = Text(key);
        return text is not null && string.IsNullOrWhiteSpace(text) ? Missing(entry, key) : text;
    }

    /// <summary>A text; null if there is none.</summary>
    public string? Text(string key) => Value(key) switch
    {
        null => null,
        StringValueSyntax text => text.Value ?? "",
        var other => Wrong<string>(other, StorageWords.ExpectedText(key)),
    };

    /// <summary>A whole number; null if there is none.</summary>
    public int? Whole(string key, int least, int most) => Value(key) switch
    {
        null => null,
        IntegerValueSyntax number when number.Value >= least && number.Value <= most => (int)number.Value,
        var other => WrongNumber(other, StorageWords.ExpectedWhole(key, least, most)),
    };

    /// <summary>True or false; false if there is nothing.</summary>
    public bool Flag(string key) => Value(key) switch
    {
        null => false,
        BooleanValueSyntax flag => flag.Value,
        var other => Wrong<object>(other, StorageWords.ExpectedFlag(key)) is not null,
    };

    /// <summary>The items of a list of texts, each read by a function; null if there is no list, or something else, which is reported.</summary>
    public IReadOnlyList<T>? List<T>(string key, Func<string, Result<T>> read) where T : notnull
    {
        if (Value(key) is not { } value)
        {
            return null;
        }

        if (value is not ArraySyntax array)
        {
            Report(value, StorageWords.ExpectedList(key));
            return null;
        }

        var items = new List<T>();
        foreach (ArrayItemSyntax item in array.Items)
        {
            Result<T> result = item.Value is StringValueSyntax text ? read(text.Value ?? "") : StorageWords.ExpectedText(key);
            if (result.TryGet(out T? good, out Fault? fault))
            {
                items.Add(good);
            }
            else
            {
                Report(item, fault);
            }
        }

        return items;
    }

    /// <summary>Reports a fault of the table as a whole.</summary>
    public void ReportHere(Fault fault) => Report(_start, fault);

    /// <summary>Reports a fault in the text of a key: its column is counted in that text.</summary>
    public void Report(string key, Fault fault)
    {
        if (Value(key) is { } value)
        {
            Report(value, fault);
        }
    }

    private ValueSyntax? Value(string key) => _entries.TryGetValue(key, out KeyValueSyntax? entry) ? entry.Value : null;

    private string? Missing(SyntaxNode at, string key)
    {
        Report(at, StorageWords.MissingKey(key));
        return null;
    }

    private T? Wrong<T>(SyntaxNode at, Fault fault) where T : class
    {
        Report(at, fault);
        return null;
    }

    private int? WrongNumber(SyntaxNode at, Fault fault)
    {
        Report(at, fault);
        return null;
    }

    // A fault's own column is counted from the first character inside the quotes.
    private void Report(SyntaxNode at, Fault fault)
    {
        TextPosition start = at.Span.Start;
        _faults.Add(new FileFault(_file, start.Line + 1, start.Column + 1 + (fault.Column ?? 0), fault.Message));
    }
}
