using Clampwise.Fretboard;

namespace Clampwise.Charts;

/// <summary>
/// A fretboard that stands, as in chord diagrams: the nut on top, the lowest string at the left, or at the right for a left-handed
/// guitar. A fret is the space where fingers go, and the wire beneath it, which a clamp covers.
/// </summary>
internal sealed class UprightFretboard
{
    private const int NoteGap = 3;
    private readonly FretboardPicture _picture;
    private readonly GlyphSet _glyphs;
    private readonly UprightPlan _plan;
    private readonly FretNumbers _numbers;
    private readonly Sheet _sheet;
    private readonly StringNumber[] _strings;

    private UprightFretboard(FretboardPicture picture, GlyphSet glyphs, FretboardStyle style, UprightPlan plan, int width)
    {
        (_picture, _glyphs, _plan) = (picture, glyphs, plan);
        _numbers = new FretNumbers(picture.Setup, style.Count);
        _strings = [.. style.IsLeftHanded ? picture.Setup.Strings.Reverse() : picture.Setup.Strings];
        int notes = picture.Notes.Select(note => note.Length + NoteGap + 3).DefaultIfEmpty(0).Max();
        int board = UprightPlan.LabelWidth + (_strings.Length * plan.Column);
        _sheet = new Sheet(Math.Min(width, board + notes), UprightPlan.OtherRows(picture) + (plan.Window.Count * plan.FretRows));
    }

    /// <summary>Pitches, states, nut, frets; null if there is too little room.</summary>
    public static IReadOnlyList<MarkedLine>? Draw(FretboardPicture picture, GlyphSet glyphs, FretboardStyle style, int width, int height)
    {
        if (UprightPlan.For(picture, width, height) is not { } plan)
        {
            return null;
        }

        var drawing = new UprightFretboard(picture, glyphs, style, plan, width);
        drawing.DrawHead();
        foreach (Fret fret in plan.Window.Frets)
        {
            drawing.DrawFret(fret);
        }

        drawing.DrawDots();
        drawing.DrawMarks();
        drawing.DrawNotes();
        return drawing._sheet.Lines;
    }

    private DotSize Size => _plan.HasLargeDots ? DotSize.Large : _plan.Column >= 6 ? DotSize.Bracketed : DotSize.Bare;

    private int Left(int place) => UprightPlan.LabelWidth + (place * _plan.Column);

    private int Middle(int place) => Left(place) + _plan.Middle;

    private int Top(Fret fret) => 3 + ((fret.Number - _plan.Window.First) * _plan.FretRows);

    private void DrawHead()
    {
        bool isClampOnly = _numbers.Label == FretNumbers.ClampLabel;
        _sheet.Put(0, 0, isClampOnly ? FretNumbers.ClampLabel : "", Mark.Quiet);
        _sheet.Put(0, 2, _plan.Window.IsBroken ? $"{_glyphs.More}" : "nut", Mark.Quiet);
        for (int place = 0; place < _strings.Length; place++)
        {
            _sheet.Put(Middle(place), 0, $"{_picture.Setup.Tuning[_strings[place]]}", Mark.Quiet);
            var state = StringState.Of(_picture, _glyphs, _strings[place]);
            if (_picture.IsCursor(_strings[place], Fret.Nut))
            {
                state.PutCursor(_sheet, StateColumn(place), 1);
            }
            else
            {
                state.Put(_sheet, StateColumn(place), 1);
            }

            _sheet.Put(Left(place), 2, new string(_plan.Window.IsBroken ? _glyphs.SilentDown : _glyphs.NutAcross, _plan.Column), Mark.Plain);
        }
    }

    // Its glyph stands above the string, its sign before that.
    private int StateColumn(int place) => Middle(place) - 1 - (_picture.Signs.IsOnRinging ? _picture.Signs.Width : 0);

    private void DrawFret(Fret fret)
    {
        int top = Top(fret);
        bool isMarked = FretNumbers.HasMarker(fret);
        string number = isMarked ? $"{_numbers.Both(fret)}{_glyphs.Inlay}" : _numbers.Both(fret);
        _sheet.Put(0, top + _plan.FingerRow, number, isMarked ? Mark.Strong : Mark.Quiet);
        for (int place = 0; place < _strings.Length; place++)
        {
            bool sounds = _picture.Sounds(_strings[place], fret);
            for (int row = top; row < top + _plan.FretRows - 1; row++)
            {
                _sheet.Put(Middle(place), row, sounds ? _glyphs.SoundingDown : _glyphs.SilentDown, sounds ? Mark.Plain : Mark.Quiet);
            }

            DrawWire(place, fret, top + _plan.FretRows - 1);
        }
    }

    private void DrawWire(int place, Fret fret, int row)
    {
        bool isLast = place + 1 == _strings.Length;
        int wire = isLast ? _plan.Middle + 1 : _plan.Column;
        _sheet.Put(Left(place) + (place == 0 ? _plan.Middle - 1 : 0), row, new string(_glyphs.Rule, place == 0 ? wire - _plan.Middle + 1 : wire), Mark.Quiet);
        _sheet.Put(Middle(place), row, _glyphs.SoundingWire, Mark.Quiet);
        if (place > 0 && _picture.IsClampedAcross(_strings[place - 1], _strings[place], fret))
        {
            _sheet.Put(Middle(place - 1), row, new string(_glyphs.Clamp, _plan.Column), Mark.Held);
        }

        if (_picture.IsClamped(_strings[place], fret))
        {
            _sheet.Put(Middle(place) - 1, row, new string(_glyphs.Clamp, 3), Mark.Held);
        }
    }

    private void DrawDots()
    {
        var dots = new Dots(_sheet, _glyphs, _picture.Signs.Width, Size);
        for (int place = 0; place < _strings.Length; place++)
        {
            foreach (Fret fret in _plan.Window.Frets)
            {
                int row = Top(fret) + _plan.FingerRow;
                dots.Draw(_picture, _strings[place], fret, Middle(place), row);
                if (_picture.IsCursor(_strings[place], fret))
                {
                    char under = _picture.Sounds(_strings[place], fret) ? _glyphs.SoundingDown : _glyphs.SilentDown;
                    dots.DrawCursor(_picture, _strings[place], fret, Middle(place), row, under);
                }
            }
        }
    }

    private void DrawMarks()
    {
        for (int place = 0; UprightPlan.HasMarkRow(_picture) && place < _strings.Length; place++)
        {
            if (_picture.Marked.Contains(_strings[place]))
            {
                _sheet.Put(Middle(place), _sheet.Height - 1, _glyphs.DiffersUp, _picture.PointedMark);
            }
        }
    }

    // Beside the board, the highest string on top as when it lies.
    private void DrawNotes()
    {
        if (_picture.Notes.IsEmpty)
        {
            return;
        }

        _sheet.Put(Left(_strings.Length) + NoteGap, 0, FretboardPicture.NotesHead, Mark.Quiet);
        foreach (StringNumber number in _picture.Setup.Strings.Where(number => number.Number < _sheet.Height))
        {
            bool isMarked = _picture.Marked.Contains(number);
            string note = $"{(isMarked ? _glyphs.Differs : ' ')} {number} {_picture.Notes[number.IndexAmong(_strings.Length)]}";
            _sheet.Put(Left(_strings.Length) + NoteGap - 2, number.Number, note, isMarked ? _picture.PointedMark : Mark.Strong);
        }
    }
}
