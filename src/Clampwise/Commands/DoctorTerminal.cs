using Clampwise.Charts;
using Clampwise.Look;
using Clampwise.Screens;
using Clampwise.Settings;

namespace Clampwise.Commands;

/// <summary>Looks at the terminal: size, kind, colours, characters.</summary>
internal static class DoctorTerminal
{
    public static IEnumerable<DoctorFinding> Examine(Surroundings around, PlayerSettings settings) =>
        [Size(around), Kind(around), Colours(around, settings), Characters(around, settings)];

    private static DoctorFinding Size(Surroundings around) => (around.IsTerminal, around.Size()) switch
    {
        (false, _) or (_, null) => DoctorFinding.Look("terminal", "there is none: input or output goes elsewhere, so no screen can open", "run it in a terminal, without pipes"),
        (_, (int columns, int rows)) when columns < Frame.NarrowestWidth || rows < Frame.LowestHeight =>
            DoctorFinding.Wrong("terminal", $"{columns}x{rows} is too small", $"make the window {Frame.NarrowestWidth}x{Frame.LowestHeight} or larger, or its letters smaller"),
        (_, (int columns, int rows)) => DoctorFinding.Ok("terminal", $"{columns}x{rows}"),
    };

    private static DoctorFinding Kind(Surroundings around) => around.Variable("TERM") switch
    {
        _ when OperatingSystem.IsWindows() => DoctorFinding.Ok("kind", "the Windows console"),
        null or "" => DoctorFinding.Look("kind", "TERM is not set, so nothing is known of the terminal", "set TERM to what your terminal is, such as xterm-256color"),
        "dumb" => DoctorFinding.Look("kind", "TERM is dumb: a terminal that cannot place its cursor", "set TERM to what your terminal is, such as xterm-256color"),
        var term => DoctorFinding.Ok("kind", $"TERM is {Printable(term)}"),
    };

    private static DoctorFinding Colours(Surroundings around, PlayerSettings settings)
    {
        Theme shown = settings.ThemeFor(around.Variable);
        string theme = $"theme {settings.Theme}{(shown.Name == settings.Theme ? "" : $", shown as {shown.Name}")} ({shown.About})";
        return ColourDepths.Of(around.Variable) switch
        {
            ColourDepth.Full => DoctorFinding.Ok("colours", $"all; {theme}"),
            ColourDepth.Sixteen => DoctorFinding.Look("colours", $"sixteen, as far as the environment tells; {theme}", "if your terminal shows more, set COLORTERM to truecolor; with sixteen, the themes dark and light have colours"),
            _ => DoctorFinding.Ok("colours", $"none, as {(string.IsNullOrEmpty(around.Variable("NO_COLOR")) ? "TERM" : "NO_COLOR")} asks; {theme}"),
        };
    }

    private static DoctorFinding Characters(Surroundings around, PlayerSettings settings)
    {
        bool canUnicode = GlyphSet.For(around.Variable) == GlyphSet.Unicode;
        bool isUnicode = settings.GlyphsFor(around.Variable) == GlyphSet.Unicode;
        return (canUnicode, isUnicode) switch
        {
            (true, true) => DoctorFinding.Ok("characters", "UTF-8"),
            (_, false) when settings.Glyphs == GlyphChoice.Ascii => DoctorFinding.Ok("characters", "ASCII, as the settings ask"),
            (false, true) => DoctorFinding.Look("characters", "drawn in UTF-8, as the settings ask, though the locale does not name it", "if signs look wrong, set screen.glyphs to \"auto\" or LANG to a UTF-8 locale"),
            _ => DoctorFinding.Look("characters", "the locale does not name UTF-8, so drawings are made of ASCII", "set LANG to a UTF-8 locale, such as C.UTF-8, or screen.glyphs to \"unicode\""),
        };
    }

    private static string Printable(string text) => string.Concat(text.Where(sign => !char.IsControl(sign)));
}
