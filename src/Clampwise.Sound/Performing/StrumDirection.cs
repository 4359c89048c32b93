namespace Clampwise.Sound.Performing;

/// <summary>Which way the hand goes across the strings.</summary>
public enum StrumDirection
{
    /// <summary>From the lowest string to the highest.</summary>
    Down,

    /// <summary>From the highest string to the lowest; lighter on the bass strings.</summary>
    Up,
}
