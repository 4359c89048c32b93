namespace Clampwise.Terminal;

/// <summary>The sixteen colours as ECMA-48 numbers them, with their bright twins after them; their shades are the terminal's own.</summary>
public enum BasicColour
{
    Black,
    Red,
    Green,
    Yellow,
    Blue,
    Magenta,
    Cyan,
    White,
    BrightBlack,
    BrightRed,
    BrightGreen,
    BrightYellow,
    BrightBlue,
    BrightMagenta,
    BrightCyan,
    BrightWhite,
}
