using Clampwise.Fretboard;

namespace Clampwise.Look;

/// <summary>
/// Draws fretboards. Only the sounding length of a string is drawn through; behind a clamp or a finger, and on a muted string, it is
/// dotted. A clamp is a bar over exactly the strings that it holds. So held, free, fretted and muted differ without any colour.
/// </summary>
internal static class FretboardDrawing
{
    /// <summary>The lines of a fretboard that lies.</summary>
    public static IReadOnlyList<Line> Draw(FretboardPicture picture, GlyphSet glyphs, int width) => Draw(picture, glyphs, width, int.MaxValue, FretboardStyle.Usual);

    /// <summary>The lines of a fretboard in a style; an upright one that does not fit the height lies down.</summary>
    public static IReadOnlyList<Line> Draw(FretboardPicture picture, GlyphSet glyphs, int width, int height, FretboardStyle style) =>
        style.IsUpright && UprightFretboard.Height(picture) <= height
            ? UprightFretboard.Draw(picture, glyphs, style.IsLeftHanded)
            : LyingFretboard.Draw(picture, glyphs, width, style.IsLeftHanded);

    /// <summary>What the glyphs mean.</summary>
    public static Line Legend(GlyphSet glyphs) => Line.Of(
        new Run($"{glyphs.Free}", Tone.Free), new Run(" free  ", Tone.Quiet),
        new Run($"{glyphs.Held}", Tone.Held), new Run(" rings from the clamp  ", Tone.Quiet),
        new Run($"{glyphs.Finger}", Tone.Finger), new Run(" finger  ", Tone.Quiet),
        new Run($"{glyphs.Muted}", Tone.Muted), new Run(" muted  ", Tone.Quiet),
        new Run($"{glyphs.Clamp}", Tone.Held), new Run(" clamp", Tone.Quiet));

    /// <summary>The mark before the nut: how the string is left to sound, or that it is muted.</summary>
    public static Line State(FretboardPicture picture, GlyphSet glyphs, StringNumber number)
    {
        (char glyph, Tone tone) = picture.StopOf(number) switch
        {
            { IsMuted: true } => (glyphs.Muted, Tone.Muted),
            { IsRinging: true } => picture.Setup.IsHeld(number) ? (glyphs.Held, Tone.Held) : (glyphs.Free, Tone.Free),
            _ => (' ', Tone.Plain),
        };
        return picture.IsCursor(number, Fret.Nut)
            ? Line.Of($"[{(glyph == ' ' ? '_' : glyph)}]", Tone.Cursor)
            : Line.Of(new Run(" ", Tone.Plain), new Run($"{glyph}", tone), new Run(" ", Tone.Plain));
    }

    // Where makers put markers (common practice, no source).
    public static bool HasMarker(int fret) => (fret % 12) is 3 or 5 or 7 or 9 or 0;
}
