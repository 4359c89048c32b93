using System.Collections.Immutable;

namespace Clampwise.Charts;

/// <summary>One line of a picture that is drawn in characters.</summary>
public sealed class MarkedLine
{
    private MarkedLine(ImmutableArray<MarkedText> pieces) => Pieces = pieces;

    /// <summary>Its pieces, left to right.</summary>
    public ImmutableArray<MarkedText> Pieces { get; }

    /// <summary>Columns that it takes.</summary>
    public int Width => Pieces.Sum(piece => piece.Text.Length);

    /// <summary>A line of pieces.</summary>
    public static MarkedLine Of(params ReadOnlySpan<MarkedText> pieces) => new([.. pieces]);

    /// <summary>The line cut to a width, with a sign at its end if something was cut off.</summary>
    /// <param name="width">Columns, 1 or more.</param>
    /// <param name="more">The sign.</param>
    public MarkedLine Cut(int width, char more)
    {
        if (Width <= width)
        {
            return this;
        }

        var kept = new List<MarkedText>();
        int left = width - 1;
        foreach (MarkedText piece in Pieces)
        {
            kept.Add(piece with { Text = piece.Text[..Math.Min(piece.Text.Length, Math.Max(0, left))] });
            left -= piece.Text.Length;
        }

        return new MarkedLine([.. kept, new MarkedText($"{more}", Mark.Quiet)]);
    }

    /// <inheritdoc/>
    public override string ToString() => string.Concat(Pieces.Select(piece => piece.Text));
}
