using Clampwise.Fretboard;

namespace Clampwise.Charts;

/// <summary>What stands before the nut for a string: its sign and how it is left to sound, or that it is muted; in a comparison, both.</summary>
internal sealed class StringState
{
    private readonly string _text;
    private readonly Mark _tone;
    private readonly string _other;

    private StringState(string text, Mark mark, string other) => (_text, _tone, _other) = (text, mark, other);

    /// <summary>The state of a string in a picture.</summary>
    public static StringState Of(FretboardPicture picture, GlyphSet glyphs, StringNumber number)
    {
        StringStop? stop = picture.StopOf(number);
        (char glyph, Mark mark) = Glyph(picture, glyphs, number, stop, glyphs.Finger);
        StringStop? compared = picture.OtherStopOf(number);
        bool differs = compared is not null && stop != compared && (stop, compared) is not ({ IsFretted: true }, { IsFretted: true });
        string other = differs ? $"/{Glyph(picture, glyphs, number, compared, glyphs.Other).Glyph}" : picture.HasRoomForTwo ? "  " : "";
        glyph = stop is { IsFretted: true } && !differs ? ' ' : glyph;
        string sign = picture.Signs.IsOnRinging ? (stop is { IsRinging: true } ? picture.SignOf(number) : "").PadLeft(picture.Signs.Width) : "";
        return new StringState($"{sign}{glyph}", mark, other);
    }

    /// <summary>Writes it.</summary>
    public void Put(Sheet sheet, int column, int row)
    {
        sheet.Put(column + 1, row, _text, _tone);
        sheet.Put(column + 1 + _text.Length, row, _other, Mark.Other);
    }

    /// <summary>Writes it with the cursor on it.</summary>
    public void PutCursor(Sheet sheet, int column, int row)
    {
        string text = _text.EndsWith(' ') ? $"{_text[..^1]}_" : _text;
        sheet.Put(column, row, $"[{text}{_other.TrimEnd()}]", Mark.Cursor);
    }

    private static (char Glyph, Mark Mark) Glyph(FretboardPicture picture, GlyphSet glyphs, StringNumber number, StringStop? stop, char finger) => stop switch
    {
        null => (' ', Mark.Plain),
        { IsMuted: true } => (glyphs.Muted, Mark.Muted),
        { IsRinging: true } => picture.Setup.IsHeld(number) ? (glyphs.Held, Mark.Held) : (glyphs.Free, Mark.Free),
        _ => (finger, Mark.Finger),
    };
}
