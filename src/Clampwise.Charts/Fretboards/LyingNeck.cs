using Clampwise.Fretboard;

namespace Clampwise.Charts;

/// <summary>Draws the neck of a lying fretboard: strings, wires, nut, markers, and clamps over exactly the strings that they hold.</summary>
internal sealed class LyingNeck(FretboardPicture picture, GlyphSet glyphs, LyingPlan plan, LyingGrid grid, Sheet sheet)
{
    /// <summary>Draws all of it.</summary>
    public void Draw()
    {
        for (int upper = 1; upper < picture.Setup.StringCount; upper++)
        {
            DrawBetween(StringNumber.Of(upper), StringNumber.Of(upper + 1));
        }

        if (plan.HasInlays)
        {
            DrawInlays();
        }

        foreach (StringNumber number in picture.Setup.Strings)
        {
            DrawString(number);
        }
    }

    private void DrawBetween(StringNumber number, StringNumber next)
    {
        for (int row = grid.Row(number) + 1; row < grid.Row(next); row++)
        {
            sheet.Put(grid.Nut, row, glyphs.Nut, Mark.Plain);
            foreach (Fret fret in plan.Window.Frets)
            {
                sheet.Put(grid.Wire(fret), row, glyphs.SilentWire, Mark.Quiet);
                if (picture.IsClampedAcross(number, next, fret))
                {
                    DrawBar(fret, row);
                }
            }
        }
    }

    // One in the middle of the neck, two at the octaves.
    private void DrawInlays()
    {
        int gaps = picture.Setup.StringCount - 1;
        foreach (Fret fret in plan.Window.Frets.Where(FretNumbers.HasMarker))
        {
            int[] places = FretNumbers.IsOctave(fret) ? [gaps / 4, gaps - 1 - (gaps / 4)] : [gaps / 2];
            foreach (int place in places)
            {
                sheet.Put(grid.Middle(fret), grid.FirstRow + (place * plan.Spacing) + (plan.Spacing / 2), glyphs.Inlay, Mark.Quiet);
            }
        }
    }

    private void DrawString(StringNumber number)
    {
        int row = grid.Row(number);
        sheet.Put(grid.Nut, row, glyphs.Nut, Mark.Plain);
        if (plan.Window.IsBroken)
        {
            sheet.Put(grid.Column(plan.StateWidth + 1), row, glyphs.More, Mark.Quiet);
        }

        foreach (Fret fret in plan.Window.Frets)
        {
            bool sounds = picture.Sounds(number, fret);
            Mark mark = picture.StopOf(number) is { IsMuted: true } ? Mark.Muted : sounds ? Mark.Plain : Mark.Quiet;
            sheet.Put(grid.Length(fret), row, new string(sounds ? glyphs.Sounding : glyphs.Silent, plan.Cell - 1), mark);
            sheet.Put(grid.Wire(fret), row, picture.SoundsAtWire(number, fret) ? glyphs.SoundingWire : glyphs.SilentWire, mark);
            if (picture.IsClamped(number, fret))
            {
                DrawBar(fret, row);
            }
        }
    }

    private void DrawBar(Fret fret, int row) => sheet.Put(grid.Bar(fret), row, new string(glyphs.Clamp, plan.BarWidth), Mark.Held);
}
