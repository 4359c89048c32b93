namespace Clampwise.Terminal;

/// <summary>A piece of a row of the screen. Every character is one column wide.</summary>
public readonly record struct StyledText(string Text, CellStyle Style);
