using Clampwise.Application;
using Clampwise.Charts;
using Clampwise.Look;
using Clampwise.Settings;

namespace Clampwise.Screens;

/// <summary>The desk with what it takes to draw at it: characters, and how fretboards lie.</summary>
internal sealed class ScreenDesk : Desk
{
    private FretboardStyle _style;

    /// <summary>A desk with nothing begun.</summary>
    public ScreenDesk(PlayerRecord record, DrillShelf shelf, SoundInUse sound, Circumstances circumstances, PlayerSettings settings, GlyphSet glyphs)
        : base(record, shelf, sound, circumstances, settings) =>
        (Glyphs, Dots, _style) = (glyphs, settings.Dots, settings.Fretboard);

    /// <summary>The characters of drawings.</summary>
    public GlyphSet Glyphs { get; private set; }

    /// <summary>What stands where fingers are.</summary>
    public DotSign Dots { get; private set; }

    /// <summary>Takes over changed settings.</summary>
    public void Use(PlayerSettings settings, GlyphSet glyphs)
    {
        Use(settings);
        (Glyphs, Dots, _style) = (glyphs, settings.Dots, settings.Fretboard);
    }

    /// <summary>
    /// A fretboard the way the player has set it, as large as the room allows; one that would stand lies down if it is higher than that.
    /// Nothing on it gives a name away: its dots are plain or bear finger numbers, and plain ones while it is built under a cursor.
    /// </summary>
    public IReadOnlyList<Line> Draw(FretboardPicture picture, int width, int height) =>
        DrawTelling(picture, width, height, Dots == DotSign.Fingers && picture.Cursor is null ? DotSign.Fingers : DotSign.Dots);

    /// <summary>The same where nothing is asked, or it is answered: with any sign on the dots.</summary>
    public IReadOnlyList<Line> DrawTelling(FretboardPicture picture, int width, int height, DotSign? sign = null) =>
        FretboardDrawing.Draw(Signed(picture, sign), Glyphs, width, height, _style).OnScreen();

    /// <summary>How many frets <see cref="DrawTelling"/> shows.</summary>
    public int FretsShown(FretboardPicture picture, int width, int height, DotSign sign) =>
        FretboardDrawing.FretsShown(Signed(picture, sign), width, height, _style);

    private FretboardPicture Signed(FretboardPicture picture, DotSign? sign) => DotSigns.On(picture, sign ?? Dots, Settings.Hand);
}
