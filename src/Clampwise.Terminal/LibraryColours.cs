using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Clampwise.Terminal;

/// <summary>The library's attributes for our styles. Asked for every piece of every row, so each is made once.</summary>
internal sealed class LibraryColours
{
    // In the order of BasicColour.
    private static readonly ColorName16[] s_names =
    [
        ColorName16.Black, ColorName16.Red, ColorName16.Green, ColorName16.Yellow, ColorName16.Blue, ColorName16.Magenta, ColorName16.Cyan, ColorName16.Gray,
        ColorName16.DarkGray, ColorName16.BrightRed, ColorName16.BrightGreen, ColorName16.BrightYellow, ColorName16.BrightBlue, ColorName16.BrightMagenta,
        ColorName16.BrightCyan, ColorName16.White,
    ];

    private readonly Dictionary<CellStyle, Attribute> _made = [];

    /// <summary>The attribute of a style.</summary>
    public Attribute this[CellStyle style]
    {
        get
        {
            if (!_made.TryGetValue(style, out Attribute attribute))
            {
                attribute = new Attribute(Of(style.Ink), Of(style.Ground), Of(style.Emphasis));
                _made[style] = attribute;
            }

            return attribute;
        }
    }

    private static Color Of(CellColour colour) =>
        colour.Exact is { } exact ? new Color(exact.Red, exact.Green, exact.Blue)
        : colour.Basic is { } basic ? new Color(s_names[(int)basic])
        : Color.None;

    private static TextStyle Of(Emphasis emphasis) =>
        (emphasis.HasFlag(Emphasis.Bold) ? TextStyle.Bold : TextStyle.None)
        | (emphasis.HasFlag(Emphasis.Underline) ? TextStyle.Underline : TextStyle.None)
        | (emphasis.HasFlag(Emphasis.Reverse) ? TextStyle.Reverse : TextStyle.None);
}
