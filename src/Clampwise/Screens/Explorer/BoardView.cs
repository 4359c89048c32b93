using Clampwise.Charts;
using Clampwise.Look;
using Clampwise.Terminal;

namespace Clampwise.Screens;

/// <summary>How the explorer's fretboard is looked at: how much of the neck, and what stands on the dots.</summary>
/// <param name="desk">Draws it, and knows the player's settings to begin with.</param>
internal sealed class BoardView(ScreenDesk desk)
{
    private static readonly DotSign[] s_signs = Enum.GetValues<DotSign>();
    private DotSign _sign = desk.Dots;
    private int? _frets;
    private (int Width, int Height) _room;

    /// <summary>Draws a picture.</summary>
    public IReadOnlyList<Line> Draw(FretboardPicture picture, int width, int height)
    {
        _room = (width, height);
        return desk.DrawTelling(picture with { Frets = _frets }, width, height, _sign);
    }

    /// <summary>Takes a key for the view of a picture; false if it means nothing here.</summary>
    public bool Press(KeyPress key, FretboardPicture picture)
    {
        switch (key.Sign)
        {
            case 'z' or 'Z':
                _frets = FretWindow.Closer(Shown(picture));
                return true;
            case 'w' or 'W':
                _frets = FretWindow.Wider(Shown(picture));
                return true;
            case 'd' or 'D':
                _sign = s_signs[(Array.IndexOf(s_signs, _sign) + 1) % s_signs.Length];
                return true;
            default:
                return false;
        }
    }

    private int Shown(FretboardPicture picture) => desk.FretsShown(picture with { Frets = _frets }, _room.Width, _room.Height, _sign);
}
