using System.Text;
using Clampwise.Theory;

namespace Clampwise.Streams;

/// <summary>
/// The one way of plain output and errors: whatever is written comes out as <see cref="VisibleText"/>. What is written as a line is one
/// line, so a line end inside of it came from outside and is shown; in text that is written without, line ends are the writer's own.
/// </summary>
internal sealed class CleanWriter : TextWriter
{
    private readonly TextWriter _to;

    private CleanWriter(TextWriter to) => _to = to;

    /// <inheritdoc/>
    public override Encoding Encoding => _to.Encoding;

    /// <summary>A writer over another; one that is clean already stays as it is.</summary>
    public static TextWriter Over(TextWriter to) => to as CleanWriter ?? new CleanWriter(to) { CoreNewLine = to.NewLine.ToCharArray() };

    /// <summary>Writes what was made harmless where it was made, with the signs of its own that its form asks for.</summary>
    public static void WriteForm(TextWriter to, string text) => ((to as CleanWriter)?._to ?? to).Write(text);

    /// <inheritdoc/>
    public override void Write(char value) => Write(value.ToString());

    /// <inheritdoc/>
    public override void Write(char[] buffer, int index, int count) => Write(new string(buffer, index, count));

    /// <inheritdoc/>
    public override void Write(ReadOnlySpan<char> buffer) => Write(buffer.ToString());

    /// <inheritdoc/>
    public override void Write(string? value) => _to.Write(VisibleText.Of(value ?? "", keepsLineEnds: true));

    /// <inheritdoc/>
    public override void WriteLine() => _to.WriteLine();

    /// <inheritdoc/>
    public override void WriteLine(string? value) => _to.WriteLine(VisibleText.Of(value ?? ""));

    /// <inheritdoc/>
    public override void WriteLine(ReadOnlySpan<char> buffer) => WriteLine(buffer.ToString());

    /// <inheritdoc/>
    public override void Flush() => _to.Flush();
}
