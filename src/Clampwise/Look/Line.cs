using System.Collections.Immutable;

namespace Clampwise.Look;

/// <summary>A piece of text in one tone. Every character is one column wide: the glyph sets hold no others.</summary>
internal readonly record struct Run(string Text, Tone Tone);

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
    public int Width => Runs.Sum(run => run.Text.Length);

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
            kept.Add(run with { Text = run.Text[..Math.Min(run.Text.Length, Math.Max(0, left))] });
            left -= run.Text.Length;
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
        foreach (string word in text.Split(' '))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > width)
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
