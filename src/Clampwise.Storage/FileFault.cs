using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>What was wrong in a text file, where, and what would be right.</summary>
/// <param name="File">The file's name, as it was given.</param>
/// <param name="Line">The line, counted from 1.</param>
/// <param name="Column">The column, counted from 1; null if the fault is about the whole line.</param>
/// <param name="Message">One sentence without a full stop.</param>
public sealed record FileFault(string File, int Line, int? Column, string Message)
{
    /// <summary>The same as a fault of one line.</summary>
    public Fault ToFault() => new(ToString());

    /// <summary>One line, such as <c>first-six.toml, line 9, column 12: string 4 is held ...</c>.</summary>
    public override string ToString() =>
        Column is { } column ? $"{File}, line {Line}, column {column}: {Message}" : $"{File}, line {Line}: {Message}";
}
