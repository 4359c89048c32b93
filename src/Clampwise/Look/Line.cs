using System.Collections.Immutable;
using Clampwise.Terminal;
using Clampwise.Theory;

namespace Clampwise.Look;

/// <summary>A piece of text in one tone, made harmless for the terminal.</summary>
internal readonly record struct Run
{
    /// <summary>A piece of text from anywhere.</summary>
    public Run(string text, Tone tone) => (Text, Tone) = (VisibleText.Of(text), tone);

    /// <summary>What is shown.</summary>
    public string Text { get; private init; }

    /// <summary>How it looks.</summary>
    public Tone Tone { get; init; }

    /// <summary>Columns that it takes.</summary>
    public int Width => Columns.Of(Text);

    /// <summary>As much of its beginning as fits.</summary>
    public Run Take(int columns) => this with { Text = Columns.Take(Text, columns) };
}

/// <summary>One line of a screen.</summary>
internal sealed class Line
{
    private const int LongestText = 98;

    private Line(ImmutableArray<Run> runs) => Runs = runs;

    /// <summary>An empty line.</summary>
    public static Line Empty { get; } = new([]);

    /// <summary>Its pieces, left to right.</summary>
    public ImmutableArray<Run> Runs { get; }

    /// <summary>Columns that it takes.</summary>
    public int Width => Runs.Sum(run => run.Width);

    /// <summary>A line of pieces.</summary>
    public static Line Of(params ReadOnlySpan<Run> runs) => new([.. runs]);

    /// <summary>A line in one tone.</summary>
    public static Line Of(string text, Tone tone = Tone.Plain) => new([new Run(text, tone)]);

    /// <summary>The line with more text at its end.</summary>
    public Line And(string text, Tone tone = Tone.Plain) => new(Runs.Add(new Run(text, tone)));

    /// <summary>The line with another at its end.</summary>
    public Line And(Line other) => new(Runs.AddRange(other.Runs));

    /// <summary>The line filled with spaces to a width.</summary>
    public Line PadTo(int width) => Width >= width ? this : And(new string(' ', width - Width));

    /// <summary>The line cut to a width, with a sign at its end if something was cut off.</summary>
    public Line Cut(int width, char more)
    {
        if (Width <= width)
        {
            return this;
        }

        return Take(width - 1).And($"{more}", Tone.Quiet);
    }

    /// <summary>The first columns of the line.</summary>
    public Line Take(int width)
    {
        if (Width <= width)
        {
            return this;
        }

        var kept = new List<Run>();
        int left = width;
        foreach (Run run in Runs)
        {
            Run taken = run.Take(left);
            kept.Add(taken);
            // A sign of two columns that does not fit leaves one free, which nothing after it may take.
            left = taken.Text.Length < run.Text.Length ? 0 : left - taken.Width;
        }

        return new Line([.. kept]);
    }

    /// <summary>The line all in one tone.</summary>
    public Line In(Tone tone) => new([.. Runs.Select(run => run with { Tone = tone })]);

    /// <summary>The line moved right.</summary>
    public Line Indent(int columns) => columns <= 0 ? this : new(Runs.Insert(0, new Run(new string(' ', columns), Tone.Plain)));

    /// <summary>The line moved to the middle of a width.</summary>
    public Line Centre(int width) => Indent((width - Width) / 2);

    /// <summary>Text broken at spaces into lines of a width, or shorter where a line would be too long to read well.</summary>
    public static IEnumerable<Line> Wrap(string text, int width, Tone tone = Tone.Plain)
    {
        width = Math.Min(width, LongestText);
        string line = "";
        foreach (string word in VisibleText.Of(text).Split(' '))
        {
            if (line.Length > 0 && Columns.Of(line) + 1 + Columns.Of(word) > width)
            {
                yield return Of(line, tone);
                line = "";
            }

            line = line.Length == 0 ? word : $"{line} {word}";
        }

        yield return Of(line, tone);
    }

    /// <inheritdoc/>
    public override string ToString() => string.Concat(Runs.Select(run => run.Text));
}
