namespace Clampwise.Charts;

/// <summary>The characters that drawings are made of; each takes one column.</summary>
/// <param name="Free">A string that rings from the nut.</param>
/// <param name="Held">A string that rings from a clamp.</param>
/// <param name="Muted">A muted string.</param>
/// <param name="Finger">A finger.</param>
/// <param name="Nut">The nut.</param>
/// <param name="Clamp">A clamp, over each string that it holds.</param>
/// <param name="Sounding">A length of string that sounds.</param>
/// <param name="Silent">A length of string that does not.</param>
/// <param name="SoundingWire">A fret wire under a sounding length.</param>
/// <param name="SilentWire">A fret wire under a silent length.</param>
/// <param name="SoundingDown">A length that sounds, on a fretboard that stands.</param>
/// <param name="SilentDown">A length that does not, on a fretboard that stands.</param>
/// <param name="NutAcross">The nut of a fretboard that stands.</param>
/// <param name="Differs">Points at a string.</param>
/// <param name="Rule">A ruled line.</param>
/// <param name="Full">The filled part of a bar.</param>
/// <param name="Blank">The open part of a bar.</param>
/// <param name="More">Stands for what was cut off.</param>
/// <param name="Other">A finger of the second of two frettings.</param>
/// <param name="Inlay">A fret marker.</param>
/// <param name="DiffersUp">Points at a string from beneath.</param>
/// <param name="Filled">A large dot: three rows of left, middle and right; the middle can be repeated.</param>
/// <param name="Hollow">The same with room for a sign in it.</param>
public sealed record GlyphSet(
    char Free,
    char Held,
    char Muted,
    char Finger,
    char Nut,
    char Clamp,
    char Sounding,
    char Silent,
    char SoundingWire,
    char SilentWire,
    char SoundingDown,
    char SilentDown,
    char NutAcross,
    char Differs,
    char Rule,
    char Full,
    char Blank,
    char More,
    char Other,
    char Inlay,
    char DiffersUp,
    string Filled,
    string Hollow)
{
    private static readonly string[] s_localeVariables = ["LC_ALL", "LC_CTYPE", "LANG"];

    /// <summary>For terminals that speak UTF-8.</summary>
    public static GlyphSet Unicode { get; } = new('○', '◆', '×', '●', '║', '█', '─', '·', '┼', '│', '│', '·', '═', '◄', '─', '█', '░', '…', '□', '•', '▲', "▗▄▖▐█▌▝▀▘", "╭─╮│ │╰─╯");

    /// <summary>For all others.</summary>
    public static GlyphSet Ascii { get; } = new('o', 'H', 'x', '@', '|', '#', '-', '.', '+', ':', '|', '.', '=', '<', '-', '#', '.', '~', '%', '*', '^', ".-.(@)'-'", ".-.( )'-'");

    /// <summary>The set that the locale of the environment can show: LC_ALL, else LC_CTYPE, else LANG (POSIX), must name UTF-8.</summary>
    public static GlyphSet For(Func<string, string?> variable)
    {
        if (OperatingSystem.IsWindows())
        {
            return Unicode;
        }

        string? locale = s_localeVariables.Select(variable).FirstOrDefault(value => !string.IsNullOrEmpty(value));
        bool isUtf8 = locale is not null && locale.Replace("-", "", StringComparison.Ordinal).Contains("utf8", StringComparison.OrdinalIgnoreCase);
        return isUtf8 && variable("TERM") != "dumb" ? Unicode : Ascii;
    }
}
