using Clampwise.Fretboard;

namespace Clampwise.Charts;

/// <summary>Draws fingers: filled or with their sign; hollow those of the second of two frettings.</summary>
/// <param name="sheet">What to draw on.</param>
/// <param name="glyphs">The characters.</param>
/// <param name="signWidth">The columns of the widest sign.</param>
/// <param name="size">How large.</param>
internal sealed class Dots(Sheet sheet, GlyphSet glyphs, int signWidth, DotSize size)
{
    // Odd, so that it has a middle.
    private readonly int _inner = Math.Max(3, signWidth | 1);

    /// <summary>Draws what is at a fret of a string, if anything, about a column and a row.</summary>
    public void Draw(FretboardPicture picture, StringNumber number, Fret fret, int middle, int row)
    {
        if (picture.IsFinger(number, fret))
        {
            string sign = picture.SignOf(number);
            Put(sign.Length == 0 ? $"{glyphs.Finger}" : sign, sign.Length == 0, Mark.Finger, middle, row);
        }
        else if (picture.IsOtherFinger(number, fret))
        {
            Put($"{glyphs.Other}", false, Mark.Other, middle, row);
        }
    }

    /// <summary>Puts square brackets about what is there, so that the cursor needs no colour.</summary>
    public void DrawCursor(FretboardPicture picture, StringNumber number, Fret fret, int middle, int row, char under)
    {
        string sign = picture.SignOf(number);
        string inside = picture.IsFinger(number, fret) ? (sign.Length == 0 ? $"{glyphs.Finger}" : sign)
            : picture.IsOtherFinger(number, fret) ? $"{glyphs.Other}"
            : $"{under}";
        string text = size == DotSize.Large ? Centre(inside, _inner, ' ') : inside;
        sheet.Put(middle - (text.Length / 2) - 1, row, $"[{text}]", Mark.Cursor);
    }

    private void Put(string sign, bool isFilled, Mark mark, int middle, int row)
    {
        if (size == DotSize.Large)
        {
            PutLarge(sign, isFilled, mark, middle - (_inner / 2) - 1, row - 1);
            return;
        }

        string text = size == DotSize.Bracketed ? $"({sign})" : sign;
        sheet.Put(middle - (text.Length / 2), row, text, mark);
    }

    private void PutLarge(string sign, bool isFilled, Mark mark, int left, int top)
    {
        string frame = isFilled ? glyphs.Filled : glyphs.Hollow;
        for (int i = 0; i < 3; i++)
        {
            string inside = i == 1 && !isFilled ? Centre(sign, _inner, ' ') : new string(frame[(i * 3) + 1], _inner);
            sheet.Put(left, top + i, $"{frame[i * 3]}{inside}{frame[(i * 3) + 2]}", mark);
        }
    }

    private static string Centre(string text, int width, char filler) =>
        text.PadLeft(text.Length + ((width - text.Length + 1) / 2), filler).PadRight(width, filler);
}
