using Terminal.Gui.Drawing;

namespace Clampwise.Look;

/// <summary>A colour as themes write it: exact, and the nearest of the sixteen.</summary>
/// <param name="Exact">The colour itself.</param>
/// <param name="Basic">Which of the sixteen stands for it; null where the theme shows none of them.</param>
internal readonly record struct ThemeColour(Color Exact, ColorName16? Basic)
{
    /// <summary>The names of the sixteen as ECMA-48 numbers them, with their bright twins after them.</summary>
    public static IReadOnlyDictionary<string, ColorName16> BasicNames { get; } = new Dictionary<string, ColorName16>
    {
        ["black"] = ColorName16.Black,
        ["red"] = ColorName16.Red,
        ["green"] = ColorName16.Green,
        ["yellow"] = ColorName16.Yellow,
        ["blue"] = ColorName16.Blue,
        ["magenta"] = ColorName16.Magenta,
        ["cyan"] = ColorName16.Cyan,
        ["white"] = ColorName16.Gray,
        ["bright-black"] = ColorName16.DarkGray,
        ["bright-red"] = ColorName16.BrightRed,
        ["bright-green"] = ColorName16.BrightGreen,
        ["bright-yellow"] = ColorName16.BrightYellow,
        ["bright-blue"] = ColorName16.BrightBlue,
        ["bright-magenta"] = ColorName16.BrightMagenta,
        ["bright-cyan"] = ColorName16.BrightCyan,
        ["bright-white"] = ColorName16.White,
    };

    /// <summary>What is drawn at a depth; the terminal's own colour if there is nothing for it.</summary>
    public Color At(ColourDepth depth) => depth switch
    {
        ColourDepth.Full => Exact,
        ColourDepth.Sixteen when Basic is { } basic => new Color(basic),
        _ => Color.None,
    };
}
