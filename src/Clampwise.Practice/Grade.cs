namespace Clampwise.Practice;

/// <summary>How well something was recalled, worked out from correctness, hints, chance and time; the numbers are those of the memory model.</summary>
public enum Grade
{
    /// <summary>Wrong, or not known.</summary>
    Missed = 1,

    /// <summary>Right with effort: slow, with a hint, or perhaps a lucky guess.</summary>
    Strained = 2,

    /// <summary>Right at the player's usual pace.</summary>
    Steady = 3,

    /// <summary>Right at once.</summary>
    Instant = 4,
}
