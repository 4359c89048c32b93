namespace Clampwise.Terminal;

/// <summary>Keys that are held while another one is pressed.</summary>
[Flags]
public enum KeyModifiers
{
    None = 0,

    /// <summary>With a named key alone: a character has its shift in itself.</summary>
    Shift = 1,
    Ctrl = 2,
    Alt = 4,
}
