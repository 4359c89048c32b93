namespace Clampwise.Charts;

/// <summary>What a mark in a picture is for. Each face of the program turns it into colours, lines or weights of its own.</summary>
public enum Mark
{
    /// <summary>Strings, wires and the nut.</summary>
    Plain,

    /// <summary>What carries the picture: frets with markers, words beside strings.</summary>
    Strong,

    /// <summary>What may be overlooked: fret numbers, lengths of string that do not sound.</summary>
    Quiet,

    /// <summary>A clamp, and strings that ring from one.</summary>
    Held,

    /// <summary>Strings that ring from the nut.</summary>
    Free,

    /// <summary>A finger.</summary>
    Finger,

    /// <summary>What belongs to the second of two frettings.</summary>
    Other,

    /// <summary>A muted string.</summary>
    Muted,

    /// <summary>The place where the cursor is.</summary>
    Cursor,

    /// <summary>A string that is pointed at.</summary>
    Pointed,
}
