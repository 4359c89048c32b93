using Clampwise.Charts;
using Clampwise.Fretboard;
using Clampwise.Look;
using Clampwise.Practice;
using Clampwise.Screens;
using Clampwise.Sound.Performing;
using Clampwise.Sound;

namespace Clampwise.Settings;

/// <summary>Everything that a player can set. The values of a new installation unless set otherwise; each is valid by its own type or its setting's range.</summary>
internal sealed record PlayerSettings
{
    /// <summary>The settings of a new installation.</summary>
    public static PlayerSettings Usual { get; } = new();

    /// <summary>How long the daily drill lasts.</summary>
    public TimeSpan SessionLength { get; init; } = PlanRequest.UsualLength;

    /// <summary>True if names are picked from choices, false if they are typed.</summary>
    public bool OffersNames { get; init; } = true;

    /// <summary>When a practice day begins.</summary>
    public TimeOnly DayStart { get; init; } = PracticeCalendar.UsualDayStart;

    /// <summary>What is set of the memory model.</summary>
    public FsrsSettings Memory { get; init; } = FsrsSettings.Usual;

    /// <summary>The fretting hand.</summary>
    public Hand Hand { get; init; } = Hand.Medium;

    /// <summary>The clamps that the player owns.</summary>
    public OwnClamps Clamps { get; init; }

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

    /// <summary>How voicings are played.</summary>
    public PlayingStyle Style { get; init; } = PlayingStyle.Standard;

    /// <summary>The characters, given what the environment can show.</summary>
    public GlyphSet GlyphsFor(Func<string, string?> variable) => Glyphs switch
    {
        GlyphChoice.Unicode => GlyphSet.Unicode,
        GlyphChoice.Ascii => GlyphSet.Ascii,
        _ => GlyphSet.For(variable),
    };

    /// <summary>The theme, in the colours that the environment has.</summary>
    public Theme ThemeFor(Func<string, string?> variable) => ThemeBook.Shipped[Theme].At(ColourDepths.Of(variable));

    /// <summary>The part that the pages work with.</summary>
    public DeskSettings ForDesk(Func<string, string?> variable, TimeZoneInfo zone) => new(GlyphsFor(variable), new PracticeCalendar(zone, DayStart), Memory)
    {
        SessionLength = SessionLength,
        Questions = new QuestionOptions(OffersNames) { Hand = Hand },
        Clamps = Clamps,
        Style = Style,
        Fretboard = Fretboard,
        Dots = Dots,
    };
}
