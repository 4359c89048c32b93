using Clampwise.Fretboard;

namespace Clampwise.Look;

/// <summary>
/// A fretboard that stands, as in chord diagrams: the nut on top, the lowest string at the left, or at the right for a left-handed
/// guitar. Two rows a fret: the space where fingers go, and the wire, which a clamp covers.
/// </summary>
internal static class UprightFretboard
{
    private const int Column = 4;
    private const int NumberWidth = 6;

    /// <summary>The rows that it takes.</summary>
    public static int Height(FretboardPicture picture) => 3 + (2 * picture.LastFret);

    public static IReadOnlyList<Line> Draw(FretboardPicture picture, GlyphSet glyphs, bool isMirrored)
    {
        StringNumber[] strings = [.. isMirrored ? picture.Setup.Strings.Reverse() : picture.Setup.Strings];
        var lines = new List<Line>
        {
            Row("", strings.Select(number => Line.Of($" {picture.Setup.Tuning[number]}".PadRight(Column)[..Column], Tone.Quiet))),
            Row("", strings.Select(number => FretboardDrawing.State(picture, glyphs, number).And(" "))),
            Row("nut", strings.Select(_ => Line.Of(new string(glyphs.NutAcross, Column)))),
        };
        foreach (Fret fret in Enumerable.Range(1, picture.LastFret).Select(Fret.Of))
        {
            int home = fret - picture.Setup.HomeFret;
            string count = picture.Setup.HomeFret > Fret.Nut && home >= 0 ? $"{fret,2} ={home,2}" : $"{fret,2}";
            lines.Add(Row(count, strings.Select(number => Space(picture, glyphs, number, fret)), FretboardDrawing.HasMarker(fret.Number) ? Tone.Strong : Tone.Quiet));
            lines.Add(Row("", strings.Select((number, i) => Wire(picture, glyphs, number, i + 1 < strings.Length ? strings[i + 1] : null, fret))));
        }

        return lines;
    }

    private static Line Row(string label, IEnumerable<Line> cells, Tone tone = Tone.Quiet) =>
        cells.Aggregate(Line.Of(label.PadRight(NumberWidth), tone), (line, cell) => line.And(cell));

    private static Line Space(FretboardPicture picture, GlyphSet glyphs, StringNumber number, Fret fret)
    {
        bool isFinger = picture.StopOf(number)?.Finger == fret;
        bool sounds = picture.Sounds(number, fret);
        char inside = isFinger ? picture.DotOn(number, glyphs.Finger) : sounds ? glyphs.SoundingDown : glyphs.SilentDown;
        return picture.IsCursor(number, fret)
            ? Line.Of($"[{inside}] ", Tone.Cursor)
            : Line.Of(" ").And($"{inside}", isFinger ? Tone.Finger : sounds ? Tone.Plain : Tone.Quiet).And("  ");
    }

    private static Line Wire(FretboardPicture picture, GlyphSet glyphs, StringNumber number, StringNumber? next, Fret fret)
    {
        bool isHeld = picture.IsClamped(number, fret);
        bool isNextHeld = next is { } other && picture.IsClamped(other, fret);
        Line crossing = isHeld ? Line.Of($"{glyphs.Clamp}", Tone.Held) : Line.Of($"{glyphs.SoundingWire}", Tone.Quiet);
        Line between = isHeld && isNextHeld ? Line.Of(new string(glyphs.Clamp, 2), Tone.Held) : Line.Of(new string(glyphs.Rule, 2), Tone.Quiet);
        Line before = isHeld ? Line.Of($"{glyphs.Clamp}", Tone.Held) : Line.Of($"{glyphs.Rule}", Tone.Quiet);
        return before.And(crossing).And(next is null ? Line.Of(isHeld ? $"{glyphs.Clamp}" : " ", Tone.Held) : between);
    }
}
