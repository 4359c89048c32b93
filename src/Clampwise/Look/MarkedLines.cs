using Clampwise.Charts;

namespace Clampwise.Look;

/// <summary>Pictures in characters as lines of a screen: each kind of mark has its tone.</summary>
internal static class MarkedLines
{
    /// <summary>The line on a screen.</summary>
    public static Line OnScreen(this MarkedLine line) => Line.Of([.. line.Pieces.Select(piece => new Run(piece.Text, ToneOf(piece.Mark)))]);

    /// <summary>The lines on a screen.</summary>
    public static IReadOnlyList<Line> OnScreen(this IEnumerable<MarkedLine> lines) => [.. lines.Select(OnScreen)];

    private static Tone ToneOf(Mark mark) => mark switch
    {
        Mark.Plain => Tone.Plain,
        Mark.Strong => Tone.Strong,
        Mark.Quiet => Tone.Quiet,
        Mark.Held => Tone.Held,
        Mark.Free => Tone.Free,
        Mark.Finger => Tone.Finger,
        Mark.Other => Tone.Other,
        Mark.Muted => Tone.Muted,
        Mark.Cursor => Tone.Cursor,
        Mark.Pointed => Tone.Wrong,
        _ => throw new ArgumentOutOfRangeException(nameof(mark), mark, "a kind of mark without a tone"),
    };
}
