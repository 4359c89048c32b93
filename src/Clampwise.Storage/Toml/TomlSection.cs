using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>The entries of one table of a TOML file. What is wrong with them is added to a list, with its place, so that all faults show at once.</summary>
internal sealed class TomlSection
{
    private readonly TomlFile _file;
    private readonly List<FileFault> _faults;
    private readonly TextPlace _start;
    private readonly Dictionary<string, TomlValue?> _entries = [];

    /// <param name="file">The file, for faults.</param>
    /// <param name="table">The table.</param>
    /// <param name="known">The keys that may stand here; any other is a fault.</param>
    /// <param name="faults">Where faults go.</param>
    public TomlSection(TomlFile file, TomlTable table, IReadOnlyCollection<string> known, List<FileFault> faults)
    {
        (_file, _start, _faults) = (file, table.At, faults);
        foreach (TomlEntry entry in table.Entries)
        {
            if (known.Contains(entry.Key))
            {
                _entries[entry.Key] = entry.Value;
            }
            else
            {
                Report(entry.At, StorageWords.UnknownKey(entry.Key, known));
            }
        }
    }

    /// <summary>A text; null if it is missing or no text, which is reported.</summary>
    public string? Required(string key)
    {
        if (Value(key) is not { } value)
        {
            return Missing(_start, key);
        }

        string? text = Text(key);
        return text is not null && string.IsNullOrWhiteSpace(text) ? Missing(value.At, key) : text;
    }

    /// <summary>A text; null if there is none.</summary>
    public string? Text(string key) => Value(key) switch
    {
        null => null,
        TomlValue.Text text => text.Value,
        var other => Wrong<string>(other.At, StorageWords.ExpectedText(key)),
    };

    /// <summary>A whole number; null if there is none.</summary>
    public int? Whole(string key, int least, int most) => Value(key) switch
    {
        null => null,
        TomlValue.Whole number when number.Value >= least && number.Value <= most => (int)number.Value,
        var other => WrongNumber(other.At, StorageWords.ExpectedWhole(key, least, most)),
    };

    /// <summary>True or false; false if there is nothing.</summary>
    public bool Flag(string key) => Value(key) switch
    {
        null => false,
        TomlValue.Flag flag => flag.Value,
        var other => Wrong<object>(other.At, StorageWords.ExpectedFlag(key)) is not null,
    };

    /// <summary>The items of a list of texts, each read by a function; null if there is no list, or something else, which is reported.</summary>
    public IReadOnlyList<T>? List<T>(string key, Func<string, Result<T>> read) where T : notnull
    {
        if (Value(key) is not { } value)
        {
            return null;
        }

        if (value is not TomlValue.List list)
        {
            Report(value.At, StorageWords.ExpectedList(key));
            return null;
        }

        var items = new List<T>();
        foreach (TomlValue item in list.Items)
        {
            Result<T> result = item is TomlValue.Text text ? read(text.Value) : StorageWords.ExpectedText(key);
            if (result.TryGet(out T? good, out Fault? fault))
            {
                items.Add(good);
            }
            else
            {
                Report(item.At, fault);
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
            Report(value.At, fault);
        }
    }

    private TomlValue? Value(string key) => _entries.GetValueOrDefault(key);

    private string? Missing(TextPlace at, string key)
    {
        Report(at, StorageWords.MissingKey(key));
        return null;
    }

    private T? Wrong<T>(TextPlace at, Fault fault) where T : class
    {
        Report(at, fault);
        return null;
    }

    private int? WrongNumber(TextPlace at, Fault fault)
    {
        Report(at, fault);
        return null;
    }

    private void Report(TextPlace at, Fault fault) => _faults.Add(_file.At(at, fault));
}
