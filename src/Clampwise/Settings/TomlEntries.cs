using Tomlyn.Syntax;

namespace Clampwise.Settings;

/// <summary>One value of a TOML document.</summary>
/// <param name="Path">Its full key, such as <c>session.minutes</c>, however it was written: beneath a table, with dots, or inline.</param>
/// <param name="At">The key in the document.</param>
/// <param name="Value">The value; null if the text breaks off before it.</param>
internal sealed record TomlEntry(string Path, SyntaxNode At, ValueSyntax? Value);

/// <summary>Reads the values of a TOML document.</summary>
internal static class TomlEntries
{
    /// <summary>All values in the order of the text.</summary>
    public static IEnumerable<TomlEntry> Of(DocumentSyntax document) =>
    [
        .. document.KeyValues.SelectMany(entry => Flat("", entry)),
        .. document.Tables.SelectMany(table => table.Items.SelectMany(entry => Flat(NameOf(table), entry))),
    ];

    /// <summary>The name of a table, such as <c>session</c>.</summary>
    public static string NameOf(TableSyntaxBase table) => table.Name is { } name ? NameOf(name) : "";

    private static IEnumerable<TomlEntry> Flat(string prefix, KeyValueSyntax entry)
    {
        if (entry.Key is not { } key)
        {
            return [];
        }

        string path = prefix.Length == 0 ? NameOf(key) : $"{prefix}.{NameOf(key)}";
        return entry.Value is InlineTableSyntax table
            ? table.Items.SelectMany(item => item.KeyValue is { } inner ? Flat(path, inner) : [])
            : [new TomlEntry(path, key, entry.Value)];
    }

    private static string NameOf(KeySyntax key) =>
        string.Join('.', key.DotKeys.Select(dotted => Word(dotted.Key)).Prepend(Word(key.Key)));

    private static string Word(BareKeyOrStringValueSyntax? word) => word switch
    {
        StringValueSyntax quoted => quoted.Value ?? "",
        null => "",
        _ => word.ToString().Trim(),
    };
}
