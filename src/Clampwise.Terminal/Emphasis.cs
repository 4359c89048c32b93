namespace Clampwise.Terminal;

/// <summary>How a character stands out without colour.</summary>
[Flags]
public enum Emphasis
{
    None = 0,
    Bold = 1,
    Underline = 2,
    Reverse = 4,
}
