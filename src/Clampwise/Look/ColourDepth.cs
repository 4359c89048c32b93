namespace Clampwise.Look;

/// <summary>How many colours a terminal shows.</summary>
internal enum ColourDepth
{
    /// <summary>None, or none wanted.</summary>
    None,

    /// <summary>The sixteen of ECMA-48 and its bright twins, in shades of the terminal's own choice.</summary>
    Sixteen,

    /// <summary>All (terminals with 256 take the nearest).</summary>
    Full,
}

/// <summary>Finds the depth.</summary>
internal static class ColourDepths
{
    /// <summary>
    /// What the environment says: none with NO_COLOR set and not empty (the convention of that name) or TERM=dumb; all with COLORTERM
    /// truecolor or 24bit, or a TERM that names 256 colours or direct colour (terminfo); else sixteen. Windows consoles show all.
    /// </summary>
    public static ColourDepth Of(Func<string, string?> variable)
    {
        string terminal = variable("TERM") ?? "";
        if (!string.IsNullOrEmpty(variable("NO_COLOR")) || terminal == "dumb")
        {
            return ColourDepth.None;
        }

        bool isFull = OperatingSystem.IsWindows()
            || variable("COLORTERM") is "truecolor" or "24bit"
            || terminal.Contains("256color", StringComparison.Ordinal)
            || terminal.Contains("direct", StringComparison.Ordinal);
        return isFull ? ColourDepth.Full : ColourDepth.Sixteen;
    }
}
