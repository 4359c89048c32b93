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

    /// <summary>The keys that change the view of a picture: closer, wider, the sign on the dots.</summary>
    public PageKey Keys(Func<FretboardPicture> picture) =>
        new("dzw", "view", [.. "dDzZwW".Select(KeyPress.Of)], press => Change(char.ToLowerInvariant(press.Sign), picture()));

    private void Change(char sign, FretboardPicture picture)
    {
        if (sign == 'd')
        {
            _sign = s_signs[(Array.IndexOf(s_signs, _sign) + 1) % s_signs.Length];
            return;
        }

        int shown = desk.FretsShown(picture with { Frets = _frets }, _room.Width, _room.Height, _sign);
        _frets = sign == 'z' ? FretWindow.Closer(shown) : FretWindow.Wider(shown);
    }
}
