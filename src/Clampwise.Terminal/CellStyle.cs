namespace Clampwise.Terminal;

/// <summary>How a character looks.</summary>
/// <param name="Ink">Its colour.</param>
/// <param name="Ground">The colour behind it.</param>
/// <param name="Emphasis">Bold, underlined, reversed.</param>
public readonly record struct CellStyle(CellColour Ink, CellColour Ground, Emphasis Emphasis);
