using Clampwise.Fretboard;

namespace Clampwise.Look;

/// <summary>
/// A fretboard that lies, the highest string on top as in tablature; for a left-handed guitar the nut is at the right. The more room
/// there is, the longer its frets, the wider apart its strings, and the larger its dots.
/// </summary>
internal sealed class LyingFretboard
{
    private readonly FretboardPicture _picture;
    private readonly GlyphSet _glyphs;
    private readonly FretboardStyle _style;
    private readonly LyingPlan _plan;
    private readonly FretNumbers _numbers;
    private readonly Sheet _sheet;
    private readonly int _firstRow;

    private LyingFretboard(FretboardPicture picture, GlyphSet glyphs, FretboardStyle style, int width, int height)
    {
        (_picture, _glyphs, _style) = (picture, glyphs, style);
        _numbers = new FretNumbers(picture.Setup, style.Count);
        _plan = LyingPlan.For(picture, width, height, _numbers.Rows);
        int rows = LyingPlan.Rows(picture.Setup.StringCount, _plan.Spacing) + _numbers.Rows;
        _firstRow = _plan.HasLargeDots ? 2 : 1;
        _sheet = new Sheet(LyingPlan.LabelWidth + _plan.BoardWidth + 2 + LyingPlan.NotesWidth(picture, width), rows);
    }

    /// <summary>The fret numbers, the strings, and the count from the home clamp.</summary>
    public static IReadOnlyList<Line> Draw(FretboardPicture picture, GlyphSet glyphs, FretboardStyle style, int width, int height)
    {
        var drawing = new LyingFretboard(picture, glyphs, style, width, height);
        drawing.DrawNumbers();
        drawing.DrawBetweenStrings();
        foreach (StringNumber number in picture.Setup.Strings)
        {
            drawing.DrawString(number);
        }

        drawing.DrawDots();
        drawing.DrawCursor();
        return drawing._sheet.Lines;
    }

    /// <summary>How many frets would be drawn.</summary>
    public static int FretsShown(FretboardPicture picture, FretboardStyle style, int width, int height) =>
        LyingPlan.For(picture, width, height, new FretNumbers(picture.Setup, style.Count).Rows).Window.Count;

    private int Row(StringNumber number) => _firstRow + ((number.Number - 1) * _plan.Spacing);

    // The left column of a piece of board, so many columns from its beginning at the side of the nut.
    private int Column(int from, int width = 1) =>
        LyingPlan.LabelWidth + (_style.IsLeftHanded ? _plan.BoardWidth - from - width : from);

    private int Start(Fret fret) => _plan.Neck + ((fret.Number - _plan.Window.First) * _plan.Cell);

    private int Middle(Fret fret) => Column(Start(fret) + _plan.Middle);

    private void DrawNumbers()
    {
        DrawNumbers(0, _numbers.Label, _numbers.Main, hasMarkers: !_plan.HasInlays);
        if (_numbers.Rows > 1)
        {
            DrawNumbers(_sheet.Height - 1, FretNumbers.ClampLabel, _numbers.FromClamp, hasMarkers: false);
        }
    }

    private void DrawNumbers(int row, string label, Func<Fret, string> count, bool hasMarkers)
    {
        _sheet.Put(0, row, label, Tone.Quiet);
        foreach (Fret fret in _plan.Window.Frets)
        {
            string number = count(fret);
            bool isMarked = FretNumbers.HasMarker(fret);
            string shown = hasMarkers && isMarked && number.Length > 0 ? $"{number}{_glyphs.Inlay}" : number;
            _sheet.Put(Middle(fret) - number.Length + 1, row, shown, isMarked ? Tone.Strong : Tone.Quiet);
        }
    }

    private void DrawBetweenStrings()
    {
        for (int upper = 1; upper < _picture.Setup.StringCount; upper++)
        {
            (StringNumber number, StringNumber next) = (StringNumber.Of(upper), StringNumber.Of(upper + 1));
            for (int row = Row(number) + 1; row < Row(next); row++)
            {
                DrawBetween(number, next, row);
            }
        }

        if (_plan.HasInlays)
        {
            DrawInlays();
        }
    }

    private void DrawBetween(StringNumber number, StringNumber next, int row)
    {
        _sheet.Put(Column(_plan.StateWidth), row, _glyphs.Nut, Tone.Plain);
        foreach (Fret fret in _plan.Window.Frets)
        {
            _sheet.Put(Column(Start(fret) + _plan.Cell - 1), row, _glyphs.SilentWire, Tone.Quiet);
            if (_picture.IsClampedAcross(number, next, fret))
            {
                DrawBar(fret, row);
            }
        }
    }

    // One in the middle of the neck, two at the octaves.
    private void DrawInlays()
    {
        int gaps = _picture.Setup.StringCount - 1;
        foreach (Fret fret in _plan.Window.Frets.Where(FretNumbers.HasMarker))
        {
            int[] places = FretNumbers.IsOctave(fret) ? [gaps / 4, gaps - 1 - (gaps / 4)] : [gaps / 2];
            foreach (int place in places)
            {
                _sheet.Put(Middle(fret), _firstRow + (place * _plan.Spacing) + (_plan.Spacing / 2), _glyphs.Inlay, Tone.Quiet);
            }
        }
    }

    private void DrawString(StringNumber number)
    {
        int row = Row(number);
        _sheet.Put(0, row, $"{number} {_picture.Setup.Tuning[number]}", Tone.Quiet);
        StringState.Of(_picture, _glyphs, number).Put(_sheet, Column(0, _plan.StateWidth), row);
        _sheet.Put(Column(_plan.StateWidth), row, _glyphs.Nut, Tone.Plain);
        if (_plan.Window.IsBroken)
        {
            _sheet.Put(Column(_plan.StateWidth + 1), row, _glyphs.More, Tone.Quiet);
        }

        foreach (Fret fret in _plan.Window.Frets)
        {
            DrawFret(number, fret, row);
        }

        bool isMarked = _picture.Marked.Contains(number);
        int end = LyingPlan.LabelWidth + _plan.BoardWidth + 1;
        _sheet.Put(end, row, isMarked ? $"{_glyphs.Differs}" : " ", _picture.MarkTone);
        if (!_picture.Notes.IsEmpty)
        {
            _sheet.Put(end + 2, row, _picture.Notes[number.IndexAmong(_picture.Setup.StringCount)], isMarked ? _picture.MarkTone : Tone.Strong);
        }
    }

    private void DrawFret(StringNumber number, Fret fret, int row)
    {
        bool sounds = _picture.Sounds(number, fret);
        Tone tone = _picture.StopOf(number) is { IsMuted: true } ? Tone.Muted : sounds ? Tone.Plain : Tone.Quiet;
        int length = _plan.Cell - 1;
        _sheet.Put(Column(Start(fret), length), row, new string(sounds ? _glyphs.Sounding : _glyphs.Silent, length), tone);
        _sheet.Put(Column(Start(fret) + length), row, _picture.SoundsAtWire(number, fret) ? _glyphs.SoundingWire : _glyphs.SilentWire, tone);
        if (_picture.IsClamped(number, fret))
        {
            DrawBar(fret, row);
        }
    }

    private void DrawBar(Fret fret, int row) =>
        _sheet.Put(Column(Start(fret) + _plan.Cell - 1 - _plan.BarWidth, _plan.BarWidth), row, new string(_glyphs.Clamp, _plan.BarWidth), Tone.Held);

    private DotSize Size => _plan.HasLargeDots ? DotSize.Large : _plan.Cell >= LyingPlan.BracketCell ? DotSize.Bracketed : DotSize.Bare;

    private void DrawDots()
    {
        var dots = new Dots(_sheet, _glyphs, _picture.Signs.Width, Size);
        foreach (StringNumber number in _picture.Setup.Strings)
        {
            foreach (Fret fret in _plan.Window.Frets)
            {
                dots.Draw(_picture, number, fret, Middle(fret), Row(number));
            }
        }
    }

    private void DrawCursor()
    {
        if (_picture.Cursor is not { } cursor)
        {
            return;
        }

        if (cursor.Fret == Fret.Nut)
        {
            StringState.Of(_picture, _glyphs, cursor.Number).PutCursor(_sheet, Column(0, _plan.StateWidth), Row(cursor.Number));
        }
        else if (_plan.Window.Frets.Contains(cursor.Fret))
        {
            _sheet.Paint(Column(Start(cursor.Fret), _plan.Cell), Row(cursor.Number), _plan.Cell, Tone.Cursor);
            char under = _picture.Sounds(cursor.Number, cursor.Fret) ? _glyphs.Sounding : _glyphs.Silent;
            new Dots(_sheet, _glyphs, _picture.Signs.Width, Size).DrawCursor(_picture, cursor.Number, cursor.Fret, Middle(cursor.Fret), Row(cursor.Number), under);
        }
    }
}
