namespace Clampwise.Look;

/// <summary>What a piece of text is for; a theme turns it into colours or, without colour, into bold, reverse and underline.</summary>
internal enum Tone
{
    /// <summary>Ordinary text.</summary>
    Plain,

    /// <summary>Text that carries the screen: titles, the question, names.</summary>
    Strong,

    /// <summary>Text that may be overlooked: fret numbers, hints at keys.</summary>
    Quiet,

    /// <summary>A key to press.</summary>
    Key,

    /// <summary>A right answer.</summary>
    Right,

    /// <summary>A wrong answer, or a notice.</summary>
    Wrong,

    /// <summary>A clamp, and strings that ring from one.</summary>
    Held,

    /// <summary>Strings that ring from the nut.</summary>
    Free,

    /// <summary>A finger.</summary>
    Finger,

    /// <summary>What belongs to the second of two voicings.</summary>
    Other,

    /// <summary>A muted string.</summary>
    Muted,

    /// <summary>The place where the cursor is.</summary>
    Cursor,
}
