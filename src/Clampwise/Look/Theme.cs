using System.Collections.Immutable;
using Clampwise.Terminal;

namespace Clampwise.Look;

/// <summary>Turns tones into what the terminal shows. What a tone means never hangs on colour alone: glyphs and words say it too.</summary>
internal sealed class Theme
{
    private readonly ImmutableArray<CellStyle> _looks;

    /// <param name="name">The name by which it is chosen.</param>
    /// <param name="about">One sentence about it.</param>
    /// <param name="ground">The colour that it paints behind everything; null to leave the terminal's own.</param>
    /// <param name="grounds">The grounds on which its colours must be legible; for a painted ground that one.</param>
    /// <param name="styles">The look of every tone, in the order of <see cref="Tone"/>.</param>
    /// <param name="depth">The colours at hand.</param>
    public Theme(string name, string about, ThemeColour? ground, ImmutableArray<Rgb> grounds, ImmutableArray<ThemeStyle> styles, ColourDepth depth = ColourDepth.Full)
    {
        (Name, About, Ground, Grounds, Styles, Depth) = (name, about, ground, grounds, styles, depth);
        CellColour behind = ground?.At(depth) ?? default;
        _looks = [.. styles.Select(style => new CellStyle(style.Ink?.At(depth) ?? default, behind, style.Emphasis))];
    }

    public string Name { get; }

    public string About { get; }

    public ThemeColour? Ground { get; }

    public ImmutableArray<Rgb> Grounds { get; }

    public ImmutableArray<ThemeStyle> Styles { get; }

    public ColourDepth Depth { get; }

    /// <summary>Colours that are legible on any ground; the terminal's own one stays.</summary>
    public static Theme Own => ThemeBook.Shipped[ThemeBook.Own];

    /// <summary>No colour at all: bold, underline and reverse.</summary>
    public static Theme Plain => ThemeBook.Shipped[ThemeBook.Plain];

    /// <summary>The look of a tone.</summary>
    public CellStyle this[Tone tone] => _looks[(int)tone];

    /// <summary>
    /// The theme in the colours that a terminal has. One that names none of the sixteen colours shows no colour where there are only
    /// those: their shades are the terminal's own, and none of them is legible on every ground.
    /// </summary>
    public Theme At(ColourDepth depth) => depth == ColourDepth.Full ? this
        : depth == ColourDepth.None || !HasBasics ? Plain
        : new Theme(Name, About, Ground, Grounds, Styles, depth);

    private bool HasBasics => Styles.Any(style => style.Ink is { Basic: not null });
}
