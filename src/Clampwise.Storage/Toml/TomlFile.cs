using System.Collections.Immutable;
using Clampwise.Theory;
using Tomlyn;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace Clampwise.Storage;

/// <summary>A text in TOML 1.0 as it was read: its values with their places, and whatever is wrong with it.</summary>
public sealed record TomlFile
{
    private TomlFile(string name, string text, DocumentSyntax document)
    {
        (Name, Text) = (name, text);
        Faults = [.. document.Diagnostics.Select(message => At(TomlSyntax.Place(message.Span.Start), message.Message))];
        Head = TomlSyntax.Head(document);
        Tables = [.. document.Tables.Select(TomlSyntax.Table)];
    }

    /// <summary>The name that faults are told with.</summary>
    public string Name { get; }

    /// <summary>The text.</summary>
    public string Text { get; }

    /// <summary>What is wrong with the text as TOML, in its order; empty if it is sound.</summary>
    public ImmutableArray<FileFault> Faults { get; }

    /// <summary>What stands before the first table.</summary>
    public TomlTable Head { get; }

    /// <summary>The tables, in the order of the text.</summary>
    public ImmutableArray<TomlTable> Tables { get; }

    /// <summary>All values with their full keys, such as <c>session.minutes</c>, however they were written: beneath a table, with dots, or inline.</summary>
    public IEnumerable<TomlEntry> Entries => Head.Entries.Concat(Tables.SelectMany(table => table.Entries.Select(table.InFull)));

    /// <summary>Reads a text; one that could not be read at all has a fault and no values.</summary>
    /// <param name="text">The text.</param>
    /// <param name="name">The file's name, for faults.</param>
    public static TomlFile Parse(string text, string name)
    {
        try
        {
            return new TomlFile(name, text, SyntaxParser.Parse(text, name));
        }
        // The parser does report what is wrong, but for arrays within arrays beyond its depth it throws.
        catch (TomlException trouble)
        {
            var empty = new DocumentSyntax();
            var start = new TextPosition(0, Math.Max(0, (trouble.Line ?? 1) - 1), Math.Max(0, (trouble.Column ?? 1) - 1));
            empty.Diagnostics.Error(new SourceSpan(name, start, start), trouble.Message.ReplaceLineEndings(" "));
            return new TomlFile(name, text, empty);
        }
    }

    /// <summary>A fault at a place of this file.</summary>
    /// <param name="place">The place.</param>
    /// <param name="message">One sentence without a full stop.</param>
    public FileFault At(TextPlace place, string message) => new(Name, place.Line, place.Column, message);

    /// <summary>A fault in a value of this file. A column of the fault's own is counted from the first character inside the quotes.</summary>
    public FileFault At(TextPlace place, Fault fault) => new(Name, place.Line, place.Column + (fault.Column ?? 0), fault.Message);
}
