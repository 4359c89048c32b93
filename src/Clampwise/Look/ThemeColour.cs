using Clampwise.Terminal;

namespace Clampwise.Look;

/// <summary>A colour as themes write it: exact, and the nearest of the sixteen.</summary>
/// <param name="Exact">The colour itself.</param>
/// <param name="Basic">Which of the sixteen stands for it; null where the theme shows none of them.</param>
internal readonly record struct ThemeColour(Rgb Exact, BasicColour? Basic)
{
    /// <summary>The names of the sixteen as ECMA-48 numbers them, with their bright twins after them.</summary>
    public static IReadOnlyDictionary<string, BasicColour> BasicNames { get; } = new Dictionary<string, BasicColour>
    {
        ["black"] = BasicColour.Black,
        ["red"] = BasicColour.Red,
        ["green"] = BasicColour.Green,
        ["yellow"] = BasicColour.Yellow,
        ["blue"] = BasicColour.Blue,
        ["magenta"] = BasicColour.Magenta,
        ["cyan"] = BasicColour.Cyan,
        ["white"] = BasicColour.White,
        ["bright-black"] = BasicColour.BrightBlack,
        ["bright-red"] = BasicColour.BrightRed,
        ["bright-green"] = BasicColour.BrightGreen,
        ["bright-yellow"] = BasicColour.BrightYellow,
        ["bright-blue"] = BasicColour.BrightBlue,
        ["bright-magenta"] = BasicColour.BrightMagenta,
        ["bright-cyan"] = BasicColour.BrightCyan,
        ["bright-white"] = BasicColour.BrightWhite,
    };

    /// <summary>What is drawn at a depth; the terminal's own colour if there is nothing for it.</summary>
    public CellColour At(ColourDepth depth) => depth switch
    {
        ColourDepth.Full => CellColour.Of(Exact),
        ColourDepth.Sixteen when Basic is { } basic => CellColour.Of(basic),
        _ => default,
    };
}
