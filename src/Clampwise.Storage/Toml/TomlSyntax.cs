using System.Collections.Immutable;
using Tomlyn.Syntax;

namespace Clampwise.Storage;

/// <summary>From the library's syntax tree to our own values, so that nothing outside knows the library.</summary>
internal static class TomlSyntax
{
    /// <summary>A place counted from 1.</summary>
    public static TextPlace Place(TextPosition at) => new(at.Line + 1, at.Column + 1);

    /// <summary>What stands before the first table.</summary>
    public static TomlTable Head(DocumentSyntax document) =>
        new("", IsListed: false, Place(document.Span.Start), document.KeyValues.LastOrDefault() is { } last ? EndOf(last) : 0, Entries(document.KeyValues));

    /// <summary>A table.</summary>
    public static TomlTable Table(TableSyntaxBase table)
    {
        SyntaxNode last = table.Items.LastOrDefault() ?? (SyntaxNode?)table.EndOfLineToken ?? table;
        return new TomlTable(table.Name is { } name ? KeyOf(name) : "", table is TableArraySyntax, Place(table.Span.Start), EndOf(last), Entries(table.Items));
    }

    private static ImmutableArray<TomlEntry> Entries(IEnumerable<KeyValueSyntax> entries) => [.. entries.SelectMany(entry => Flat("", entry))];

    // The values of an inline table are given as if they were written with dots; an empty one is a value that nothing takes.
    private static IEnumerable<TomlEntry> Flat(string prefix, KeyValueSyntax entry)
    {
        if (entry.Key is not { } key)
        {
            return [];
        }

        string path = prefix + KeyOf(key);
        return entry.Value is InlineTableSyntax { Items.ChildrenCount: > 0 } table
            ? table.Items.SelectMany(item => item.KeyValue is { } inner ? Flat(path + ".", inner) : [])
            : [new TomlEntry(path, Place(key.Span.Start), entry.Value is { } value ? Value(value) : null)];
    }

    private static TomlValue Value(ValueSyntax value)
    {
        (TextPlace at, int start, int end, string written) = (Place(value.Span.Start), value.Span.Start.Offset, EndOf(value), value.ToString().Trim());
        return value switch
        {
            StringValueSyntax { Value: { } text } => new TomlValue.Text(at, start, end, written, text),
            IntegerValueSyntax whole => new TomlValue.Whole(at, start, end, written, whole.Value),
            FloatValueSyntax real => new TomlValue.Real(at, start, end, written, real.Value),
            BooleanValueSyntax flag => new TomlValue.Flag(at, start, end, written, flag.Value),
            ArraySyntax array => new TomlValue.List(at, start, end, written, [.. array.Items.Select(item => item.Value).OfType<ValueSyntax>().Select(Value)]),
            _ => new TomlValue.Other(at, start, end, written),
        };
    }

    private static int EndOf(SyntaxNode node) => node.Span.End.Offset + 1;

    private static string KeyOf(KeySyntax key) =>
        string.Join('.', key.DotKeys.Select(dotted => Word(dotted.Key)).Prepend(Word(key.Key)));

    private static string Word(BareKeyOrStringValueSyntax? word) => word switch
    {
        StringValueSyntax quoted => quoted.Value ?? "",
        null => "",
        _ => word.ToString().Trim(),
    };
}
