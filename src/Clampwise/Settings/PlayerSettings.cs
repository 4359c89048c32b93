using Clampwise.Application;
using Clampwise.Charts;
using Clampwise.Look;
using Clampwise.Sound;

namespace Clampwise.Settings;

/// <summary>Everything that a player can set. The values of a new installation unless set otherwise; each is valid by its own type or its setting's range.</summary>
internal sealed record PlayerSettings : PracticeSettings
{
    /// <summary>The settings of a new installation.</summary>
    public static PlayerSettings Usual { get; } = new();

    /// <summary>True until the welcome has been seen.</summary>
    public bool ShowsWelcome { get; init; } = true;

    /// <summary>How fretboards lie.</summary>
    public FretboardStyle Fretboard { get; init; } = FretboardStyle.Usual;

    /// <summary>What stands where fingers are.</summary>
    public DotSign Dots { get; init; } = DotSign.Dots;

    /// <summary>The name of the theme.</summary>
    public string Theme { get; init; } = ThemeBook.Own;

    /// <summary>The characters of drawings.</summary>
    public GlyphChoice Glyphs { get; init; } = GlyphChoice.Auto;

    /// <summary>Device and voice.</summary>
    public SoundSettings Sound { get; init; } = SoundSettings.Standard;

    /// <summary>The characters, given what the environment can show.</summary>
    public GlyphSet GlyphsFor(Func<string, string?> variable) => Glyphs switch
    {
        GlyphChoice.Unicode => GlyphSet.Unicode,
        GlyphChoice.Ascii => GlyphSet.Ascii,
        _ => GlyphSet.For(variable),
    };

    /// <summary>The theme, in the colours that the environment has.</summary>
    public Theme ThemeFor(Func<string, string?> variable) => ThemeBook.Shipped[Theme].At(ColourDepths.Of(variable));
}
