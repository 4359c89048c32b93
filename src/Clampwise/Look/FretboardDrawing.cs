using Clampwise.Fretboard;

namespace Clampwise.Look;

/// <summary>
/// Draws a fretboard lying down, the highest string on top as in tablature. Only the sounding length of a string is drawn through;
/// behind a clamp or a finger, and on a muted string, it is dotted. A clamp is a bar over exactly the strings that it holds.
/// </summary>
internal sealed class FretboardDrawing
{
    private const int WidestCell = 7;
    private const int NarrowestCell = 3;
    private const int LabelWidth = 7;
    private const int StateWidth = 3;
    private readonly FretboardPicture _picture;
    private readonly GlyphSet _glyphs;
    private readonly int _cell;
    private readonly int _frets;

    private FretboardDrawing(FretboardPicture picture, GlyphSet glyphs, int width)
    {
        _picture = picture;
        _glyphs = glyphs;
        int notes = picture.Notes.Select(note => note.Length + 1).DefaultIfEmpty(0).Max() + 2;
        int room = width - LabelWidth - StateWidth - 1 - notes;
        _frets = Math.Min(picture.LastFret, Math.Max(room / NarrowestCell, 1));
        _cell = Math.Clamp(room / _frets, NarrowestCell, WidestCell);
    }

    /// <summary>The lines of the drawing: the fret numbers, then the strings, then the count from the home clamp.</summary>
    public static IReadOnlyList<Line> Draw(FretboardPicture picture, GlyphSet glyphs, int width)
    {
        var drawing = new FretboardDrawing(picture, glyphs, width);
        return [drawing.Numbers("fret", fret => fret.Number), .. picture.Setup.Strings.Reverse().Select(drawing.StringLine), .. drawing.HomeNumbers()];
    }

    /// <summary>What the glyphs mean.</summary>
    public static Line Legend(GlyphSet glyphs) => Line.Of(
        new Run($"{glyphs.Free}", Tone.Free), new Run(" free  ", Tone.Quiet),
        new Run($"{glyphs.Held}", Tone.Held), new Run(" rings from the clamp  ", Tone.Quiet),
        new Run($"{glyphs.Finger}", Tone.Finger), new Run(" finger  ", Tone.Quiet),
        new Run($"{glyphs.Muted}", Tone.Muted), new Run(" muted  ", Tone.Quiet),
        new Run($"{glyphs.Clamp}", Tone.Held), new Run(" clamp", Tone.Quiet));

    private IEnumerable<Line> HomeNumbers() => _picture.Setup.HomeFret > Fret.Nut
        ? [Numbers("clamp", fret => fret - _picture.Setup.HomeFret)]
        : [];

    private Line Numbers(string label, Func<Fret, int> count)
    {
        string text = label.PadRight(LabelWidth + StateWidth + 1);
        for (int fret = 1; fret <= _frets; fret++)
        {
            int number = count(Fret.Of(fret));
            string shown = number < 0 ? "" : $"{number}";
            int left = Math.Max(0, (_cell - 1) / 2);
            text += $"{new string(' ', left)}{shown}".PadRight(_cell);
        }

        return Line.Of(text.TrimEnd(), Tone.Quiet);
    }

    private Line StringLine(StringNumber number)
    {
        StringStop? stop = _picture.Fretting?[number];
        Line line = Line.Of($"{number} {_picture.Setup.Tuning[number],-4} ", Tone.Quiet).And(State(number, stop)).And($"{_glyphs.Nut}", Tone.Plain);
        for (int fret = 1; fret <= _frets; fret++)
        {
            line = line.And(Cell(number, stop, Fret.Of(fret)));
        }

        bool isMarked = _picture.Marked.Contains(number);
        line = isMarked ? line.And($" {_glyphs.Differs}", Tone.Wrong) : line.And("  ");
        return _picture.Notes.IsEmpty ? line : line.And($" {_picture.Notes[number.IndexAmong(_picture.Setup.StringCount)]}", isMarked ? Tone.Wrong : Tone.Strong);
    }

    private Line State(StringNumber number, StringStop? stop)
    {
        bool isHeld = _picture.Setup.IsHeld(number);
        (char glyph, Tone tone) = stop switch
        {
            { IsMuted: true } => (_glyphs.Muted, Tone.Muted),
            { IsRinging: true } => isHeld ? (_glyphs.Held, Tone.Held) : (_glyphs.Free, Tone.Free),
            _ => (' ', Tone.Plain),
        };
        return IsCursor(number, Fret.Nut)
            ? Line.Of($"[{(glyph == ' ' ? '_' : glyph)}]", Tone.Cursor)
            : Line.Of(new Run(" ", Tone.Plain), new Run($"{glyph}", tone), new Run(" ", Tone.Plain));
    }

    private Line Cell(StringNumber number, StringStop? stop, Fret fret)
    {
        Fret ground = _picture.Setup.Ground(number);
        bool isMuted = stop is { IsMuted: true };
        Fret soundsFrom = stop?.Finger ?? ground;
        bool sounds = !isMuted && fret > soundsFrom;
        char line = sounds ? _glyphs.Sounding : _glyphs.Silent;
        char wire = sounds || (!isMuted && fret == soundsFrom) ? _glyphs.SoundingWire : _glyphs.SilentWire;
        Tone tone = isMuted ? Tone.Muted : sounds ? Tone.Plain : Tone.Quiet;
        bool isFinger = stop?.Finger == fret;
        bool isClamp = _picture.Setup.Clamps.Any(clamp => clamp.Fret == fret && clamp.Strings.Contains(number));
        int middle = (_cell - 1) / 2;
        Line cell = Line.Empty;
        for (int column = 0; column < _cell - 1; column++)
        {
            bool isBar = isClamp && column == _cell - 2;
            cell = isBar ? cell.And($"{_glyphs.Clamp}", Tone.Held)
                : column == middle && isFinger ? cell.And($"{_glyphs.Finger}", Tone.Finger)
                : cell.And($"{line}", tone);
        }

        cell = cell.And($"{wire}", tone);
        return IsCursor(number, fret) ? WithCursor(cell, middle, isFinger) : cell;
    }

    private Line WithCursor(Line cell, int middle, bool isFinger)
    {
        string text = cell.ToString();
        char inside = isFinger ? _glyphs.Finger : text[middle];
        string marked = middle > 0 ? $"{text[..(middle - 1)]}[{inside}]{text[(middle + 2)..]}" : $"[{inside}]";
        return Line.Of(marked, Tone.Cursor);
    }

    private bool IsCursor(StringNumber number, Fret fret) => _picture.Cursor is { } cursor && cursor.Number == number && cursor.Fret == fret;
}
