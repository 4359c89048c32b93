namespace Clampwise.Terminal;

/// <summary>A colour on the screen: the terminal's own (the default), an exact one, or one of the sixteen.</summary>
public readonly record struct CellColour
{
    /// <summary>The exact colour, if it is one.</summary>
    public Rgb? Exact { get; private init; }

    /// <summary>Which of the sixteen, if it is one.</summary>
    public BasicColour? Basic { get; private init; }

    /// <summary>An exact colour.</summary>
    public static CellColour Of(Rgb exact) => new() { Exact = exact };

    /// <summary>One of the sixteen.</summary>
    public static CellColour Of(BasicColour basic) => new() { Basic = basic };
}
