using Clampwise.Practice;
using Clampwise.Settings;
using Clampwise.Sound;

namespace Clampwise.Screens;

/// <summary>
/// Puts changed settings to work while the program runs: what is quick at once, what opens a device or goes through the whole log when
/// the player is done changing.
/// </summary>
internal sealed class SettingsInForce
{
    // Long enough for a device that works to say so, short enough not to be felt.
    private static readonly TimeSpan s_patience = TimeSpan.FromMilliseconds(300);
    private readonly Frame _frame;
    private readonly ScreenDesk _desk;
    private readonly SettingsKeeper _settings;
    private readonly Surroundings _around;
    private readonly Func<FsrsSettings, MemoryState> _remember;
    private TimeSpan? _given;
    private SoundSettings _heard;
    private FsrsSettings _remembered;

    /// <summary>Follows the changes of settings from now on.</summary>
    /// <param name="frame">What looks change on.</param>
    /// <param name="desk">What takes over everything else.</param>
    /// <param name="settings">The settings.</param>
    /// <param name="around">Where devices and the environment come from.</param>
    /// <param name="given">A length of the daily drill that goes before the file's, until that is changed; null for none.</param>
    /// <param name="remember">What the log says of the player by other settings of memory.</param>
    public SettingsInForce(Frame frame, ScreenDesk desk, SettingsKeeper settings, Surroundings around, TimeSpan? given, Func<FsrsSettings, MemoryState> remember)
    {
        (_frame, _desk, _settings, _around, _given, _remember) = (frame, desk, settings, around, given, remember);
        (_heard, _remembered) = (settings.Now.Sound, settings.Now.Memory);
        settings.Changed += Apply;
    }

    /// <summary>The settings with what goes before them.</summary>
    public static PlayerSettings With(PlayerSettings settings, TimeSpan? given) => settings with { SessionLength = given ?? settings.SessionLength };

    /// <summary>Opens the sound anew and works out anew what is remembered, if their settings have changed.</summary>
    public void Settle()
    {
        PlayerSettings now = _settings.Now;
        if (_heard != now.Sound)
        {
            _heard = now.Sound;
            _desk.Sound.Change(() => _around.OpenSound(now.Sound, s_patience));
        }

        if (_remembered != now.Memory)
        {
            _remembered = now.Memory;
            _desk.Record.Learn(_remember(now.Memory));
        }
    }

    private void Apply(PlayerSettings before, PlayerSettings after)
    {
        _given = before.SessionLength == after.SessionLength ? _given : null;
        _desk.Use(With(after, _given), after.GlyphsFor(_around.Variable));
        if (before.Theme != after.Theme || before.Glyphs != after.Glyphs)
        {
            _frame.Wear(after.ThemeFor(_around.Variable), after.GlyphsFor(_around.Variable));
        }
    }
}
