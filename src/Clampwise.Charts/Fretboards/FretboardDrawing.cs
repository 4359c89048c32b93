namespace Clampwise.Charts;

/// <summary>
/// Draws fretboards. Only the sounding length of a string is drawn through; behind a clamp or a finger, and on a muted string, it is
/// dotted. A clamp is a bar over exactly the strings that it holds. So held, free, fretted and muted differ without any colour. The
/// drawing grows with the room that there is.
/// </summary>
public static class FretboardDrawing
{
    /// <summary>The lines of a fretboard in a style; an upright one that does not fit lies down. None is wider than asked.</summary>
    public static IReadOnlyList<MarkedLine> Draw(FretboardPicture picture, GlyphSet glyphs, int width, int height, FretboardStyle style)
    {
        IReadOnlyList<MarkedLine> lines = (style.IsUpright ? UprightFretboard.Draw(picture, glyphs, style, width, height) : null)
            ?? LyingFretboard.Draw(picture, glyphs, style, width, height);
        return [.. lines.Select(line => line.Cut(width, glyphs.More))];
    }

    /// <summary>How many frets such a drawing shows.</summary>
    public static int FretsShown(FretboardPicture picture, int width, int height, FretboardStyle style) =>
        (style.IsUpright ? UprightPlan.For(picture, width, height)?.Window.Count : null) ?? LyingFretboard.FretsShown(picture, style, width, height);

    /// <summary>What the glyphs mean.</summary>
    public static MarkedLine Legend(GlyphSet glyphs) => MarkedLine.Of(
        new MarkedText($"{glyphs.Free}", Mark.Free), new MarkedText(" free  ", Mark.Quiet),
        new MarkedText($"{glyphs.Held}", Mark.Held), new MarkedText(" rings from the clamp  ", Mark.Quiet),
        new MarkedText($"{glyphs.Finger}", Mark.Finger), new MarkedText(" finger  ", Mark.Quiet),
        new MarkedText($"{glyphs.Muted}", Mark.Muted), new MarkedText(" muted  ", Mark.Quiet),
        new MarkedText($"{glyphs.Clamp}", Mark.Held), new MarkedText(" clamp", Mark.Quiet));

    /// <summary>What the glyphs of two frettings in one drawing mean, given what each is called.</summary>
    public static MarkedLine LegendOfTwo(GlyphSet glyphs, string first, string second) => MarkedLine.Of(
        new MarkedText($"{glyphs.Finger}", Mark.Finger), new MarkedText($" {first}  ", Mark.Quiet),
        new MarkedText($"{glyphs.Other}", Mark.Other), new MarkedText($" {second}  ", Mark.Quiet),
        new MarkedText($"{glyphs.Muted}/{glyphs.Free}", Mark.Other), new MarkedText($" at the nut: {glyphs.Muted} {first}, {glyphs.Free} {second}", Mark.Quiet));
}
