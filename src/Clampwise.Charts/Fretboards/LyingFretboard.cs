using Clampwise.Fretboard;

namespace Clampwise.Charts;

/// <summary>
/// A fretboard that lies, the highest string on top as in tablature; for a left-handed guitar the nut is at the right. The more room
/// there is, the longer its frets, the wider apart its strings, and the larger its dots.
/// </summary>
internal sealed class LyingFretboard
{
    private readonly FretboardPicture _picture;
    private readonly GlyphSet _glyphs;
    private readonly LyingPlan _plan;
    private readonly LyingGrid _grid;
    private readonly FretNumbers _numbers;
    private readonly Sheet _sheet;
    private readonly Dots _dots;

    private LyingFretboard(FretboardPicture picture, GlyphSet glyphs, FretboardStyle style, int width, int height)
    {
        (_picture, _glyphs) = (picture, glyphs);
        _numbers = new FretNumbers(picture.Setup, style.Count);
        _plan = LyingPlan.For(picture, width, height, _numbers.Rows);
        _grid = new LyingGrid(_plan, style.IsLeftHanded);
        int rows = LyingPlan.Rows(picture.Setup.StringCount, _plan.Spacing) + _numbers.Rows;
        _sheet = new Sheet(LyingPlan.LabelWidth + _plan.BoardWidth + 2 + LyingPlan.NotesWidth(picture, width), rows);
        DotSize size = _plan.HasLargeDots ? DotSize.Large : _plan.Cell >= LyingPlan.BracketCell ? DotSize.Bracketed : DotSize.Bare;
        _dots = new Dots(_sheet, glyphs, picture.Signs.Width, size);
    }

    /// <summary>The fret numbers, the strings, and the count from the home clamp.</summary>
    public static IReadOnlyList<MarkedLine> Draw(FretboardPicture picture, GlyphSet glyphs, FretboardStyle style, int width, int height)
    {
        var drawing = new LyingFretboard(picture, glyphs, style, width, height);
        drawing.DrawNumbers();
        new LyingNeck(picture, glyphs, drawing._plan, drawing._grid, drawing._sheet).Draw();
        foreach (StringNumber number in picture.Setup.Strings)
        {
            drawing.DrawEnds(number);
        }

        drawing.DrawDots();
        drawing.DrawCursor();
        return drawing._sheet.Lines;
    }

    /// <summary>How many frets would be drawn.</summary>
    public static int FretsShown(FretboardPicture picture, FretboardStyle style, int width, int height) =>
        LyingPlan.For(picture, width, height, new FretNumbers(picture.Setup, style.Count).Rows).Window.Count;

    private void DrawNumbers()
    {
        DrawNumbers(0, _numbers.Label, _numbers.Main, hasMarkers: !_plan.HasInlays);
        if (!_picture.Notes.IsEmpty)
        {
            _sheet.Put(LyingPlan.LabelWidth + _plan.BoardWidth + 3, 0, FretboardPicture.NotesHead, Mark.Quiet);
        }

        if (_numbers.Rows > 1)
        {
            DrawNumbers(_sheet.Height - 1, FretNumbers.ClampLabel, _numbers.FromClamp, hasMarkers: false);
        }
    }

    private void DrawNumbers(int row, string label, Func<Fret, string> count, bool hasMarkers)
    {
        _sheet.Put(0, row, label, Mark.Quiet);
        foreach (Fret fret in _plan.Window.Frets)
        {
            string number = count(fret);
            bool isMarked = FretNumbers.HasMarker(fret);
            string shown = hasMarkers && isMarked && number.Length > 0 ? $"{number}{_glyphs.Inlay}" : number;
            _sheet.Put(_grid.Middle(fret) - number.Length + 1, row, shown, isMarked ? Mark.Strong : Mark.Quiet);
        }
    }

    // What stands at both ends of a string: its name and its state, and what is said of it.
    private void DrawEnds(StringNumber number)
    {
        int row = _grid.Row(number);
        _sheet.Put(0, row, $"{number} {_picture.Setup.Tuning[number]}", Mark.Quiet);
        StringState.Of(_picture, _glyphs, number).Put(_sheet, _grid.State, row);
        bool isMarked = _picture.Marked.Contains(number);
        int end = LyingPlan.LabelWidth + _plan.BoardWidth + 1;
        _sheet.Put(end, row, isMarked ? _glyphs.Differs : ' ', _picture.PointedMark);
        if (!_picture.Notes.IsEmpty)
        {
            _sheet.Put(end + 2, row, _picture.Notes[number.IndexAmong(_picture.Setup.StringCount)], isMarked ? _picture.PointedMark : Mark.Strong);
        }
    }

    private void DrawDots()
    {
        foreach (StringNumber number in _picture.Setup.Strings)
        {
            foreach (Fret fret in _plan.Window.Frets)
            {
                _dots.Draw(_picture, number, fret, _grid.Middle(fret), _grid.Row(number));
            }
        }
    }

    private void DrawCursor()
    {
        if (_picture.Cursor is not var (number, fret))
        {
            return;
        }

        int row = _grid.Row(number);
        if (fret == Fret.Nut)
        {
            StringState.Of(_picture, _glyphs, number).PutCursor(_sheet, _grid.State, row);
        }
        else if (_plan.Window.Frets.Contains(fret))
        {
            _sheet.Paint(_grid.Cell(fret), row, _plan.Cell, Mark.Cursor);
            _dots.DrawCursor(_picture, number, fret, _grid.Middle(fret), row, _picture.Sounds(number, fret) ? _glyphs.Sounding : _glyphs.Silent);
        }
    }
}
