using Clampwise.Fretboard;

namespace Clampwise.Look;

/// <summary>A fretboard that lies, the highest string on top as in tablature; for a left-handed guitar the nut is at the right.</summary>
internal sealed class LyingFretboard
{
    private const int WidestCell = 9;
    private const int NarrowestCell = 3;
    private const int LabelWidth = 7;
    private const int StateWidth = 3;
    private readonly FretboardPicture _picture;
    private readonly GlyphSet _glyphs;
    private readonly bool _isMirrored;
    private readonly int _cell;
    private readonly int _frets;

    private LyingFretboard(FretboardPicture picture, GlyphSet glyphs, int width, bool isMirrored)
    {
        _picture = picture;
        _glyphs = glyphs;
        _isMirrored = isMirrored;
        int notes = picture.Notes.Select(note => note.Length + 1).DefaultIfEmpty(0).Max() + 2;
        int room = width - LabelWidth - StateWidth - 1 - notes;
        _frets = Math.Min(picture.LastFret, Math.Max(room / NarrowestCell, 1));
        _cell = Math.Clamp(room / _frets, NarrowestCell, WidestCell);
    }

    /// <summary>The fret numbers, the strings, and the count from the home clamp.</summary>
    public static IReadOnlyList<Line> Draw(FretboardPicture picture, GlyphSet glyphs, int width, bool isMirrored)
    {
        var drawing = new LyingFretboard(picture, glyphs, width, isMirrored);
        Fret home = picture.Setup.HomeFret;
        return
        [
            drawing.Numbers("fret", fret => fret.Number),
            .. picture.Setup.Strings.Reverse().Select(drawing.StringLine),
            .. home > Fret.Nut ? [drawing.Numbers("clamp", fret => fret - home)] : Array.Empty<Line>(),
        ];
    }

    private int Middle => (_cell - 1) / 2;

    private Line Numbers(string label, Func<Fret, int> count)
    {
        IEnumerable<Line> cells = Frets.Select(fret =>
        {
            int number = count(fret);
            string shown = number < 0 ? "" : $"{number}";
            return Line.Of($"{new string(' ', Middle)}{shown}".PadRight(_cell)[.._cell], FretboardDrawing.HasMarker(fret.Number) ? Tone.Strong : Tone.Quiet);
        });
        return Line.Of(label.PadRight(LabelWidth), Tone.Quiet).And(Board(Line.Of(new string(' ', StateWidth + 1)), cells));
    }

    private Line StringLine(StringNumber number)
    {
        Line nut = FretboardDrawing.State(_picture, _glyphs, number);
        Line wire = Line.Of($"{_glyphs.Nut}");
        Line board = Board(_isMirrored ? wire.And(nut) : nut.And(wire), Frets.Select(fret => Cell(number, fret)));
        Line line = Line.Of($"{number} {_picture.Setup.Tuning[number],-4} ", Tone.Quiet).And(board);
        bool isMarked = _picture.Marked.Contains(number);
        line = isMarked ? line.And($" {_glyphs.Differs}", Tone.Wrong) : line.And("  ");
        return _picture.Notes.IsEmpty ? line : line.And($" {_picture.Notes[number.IndexAmong(_picture.Setup.StringCount)]}", isMarked ? Tone.Wrong : Tone.Strong);
    }

    private IEnumerable<Fret> Frets => Enumerable.Range(1, _frets).Select(Fret.Of);

    private Line Board(Line nut, IEnumerable<Line> cells)
    {
        Line[] parts = [nut, .. cells];
        return (_isMirrored ? parts.Reverse() : parts).Aggregate(Line.Empty, (line, part) => line.And(part));
    }

    private Line Cell(StringNumber number, Fret fret)
    {
        bool sounds = _picture.Sounds(number, fret);
        bool isMuted = _picture.StopOf(number) is { IsMuted: true };
        bool isFinger = _picture.StopOf(number)?.Finger == fret;
        bool isClamp = _picture.IsClamped(number, fret);
        Tone tone = isMuted ? Tone.Muted : sounds ? Tone.Plain : Tone.Quiet;
        bool isSoundingWire = sounds || (!isMuted && fret == _picture.SoundsFrom(number));
        var runs = new List<Run>();
        for (int column = 0; column < _cell - 1; column++)
        {
            runs.Add(isClamp && column == _cell - 2 ? new Run($"{_glyphs.Clamp}", Tone.Held)
                : isFinger && column == Middle ? new Run($"{_picture.DotOn(number, _glyphs.Finger)}", Tone.Finger)
                : new Run($"{(sounds ? _glyphs.Sounding : _glyphs.Silent)}", tone));
        }

        runs.Add(new Run($"{(isSoundingWire ? _glyphs.SoundingWire : _glyphs.SilentWire)}", tone));
        if (_picture.IsCursor(number, fret))
        {
            MarkCursor(runs);
        }

        return Line.Of([.. _isMirrored ? Enumerable.Reverse(runs) : runs]);
    }

    // Brackets around the middle, so that the cursor needs no colour.
    private void MarkCursor(List<Run> runs)
    {
        for (int i = 0; i < runs.Count; i++)
        {
            string text = i == Middle - 1 ? (_isMirrored ? "]" : "[") : i == Middle + 1 ? (_isMirrored ? "[" : "]") : runs[i].Text;
            runs[i] = new Run(text, Tone.Cursor);
        }
    }
}
