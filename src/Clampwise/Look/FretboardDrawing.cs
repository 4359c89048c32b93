namespace Clampwise.Look;

/// <summary>
/// Draws fretboards. Only the sounding length of a string is drawn through; behind a clamp or a finger, and on a muted string, it is
/// dotted. A clamp is a bar over exactly the strings that it holds. So held, free, fretted and muted differ without any colour. The
/// drawing grows with the room that there is.
/// </summary>
internal static class FretboardDrawing
{
    /// <summary>The lines of a fretboard in a style; an upright one that does not fit lies down. None is wider than asked.</summary>
    public static IReadOnlyList<Line> Draw(FretboardPicture picture, GlyphSet glyphs, int width, int height, FretboardStyle style)
    {
        IReadOnlyList<Line> lines = (style.IsUpright ? UprightFretboard.Draw(picture, glyphs, style, width, height) : null)
            ?? LyingFretboard.Draw(picture, glyphs, style, width, height);
        return [.. lines.Select(line => line.Cut(width, glyphs.More))];
    }

    /// <summary>How many frets such a drawing shows.</summary>
    public static int FretsShown(FretboardPicture picture, int width, int height, FretboardStyle style) =>
        (style.IsUpright ? UprightPlan.For(picture, width, height)?.Window.Count : null) ?? LyingFretboard.FretsShown(picture, style, width, height);

    /// <summary>What the glyphs mean.</summary>
    public static Line Legend(GlyphSet glyphs) => Line.Of(
        new Run($"{glyphs.Free}", Tone.Free), new Run(" free  ", Tone.Quiet),
        new Run($"{glyphs.Held}", Tone.Held), new Run(" rings from the clamp  ", Tone.Quiet),
        new Run($"{glyphs.Finger}", Tone.Finger), new Run(" finger  ", Tone.Quiet),
        new Run($"{glyphs.Muted}", Tone.Muted), new Run(" muted  ", Tone.Quiet),
        new Run($"{glyphs.Clamp}", Tone.Held), new Run(" clamp", Tone.Quiet));

    /// <summary>What the glyphs of two frettings in one drawing mean, given what each is called.</summary>
    public static Line LegendOfTwo(GlyphSet glyphs, string first, string second) => Line.Of(
        new Run($"{glyphs.Finger}", Tone.Finger), new Run($" {first}  ", Tone.Quiet),
        new Run($"{glyphs.Other}", Tone.Other), new Run($" {second}  ", Tone.Quiet),
        new Run($"{glyphs.Muted}/{glyphs.Free}", Tone.Other), new Run($" at the nut: {glyphs.Muted} {first}, {glyphs.Free} {second}", Tone.Quiet));
}
