namespace Clampwise.Terminal;

/// <summary>A piece of a row of the screen, as wide as <see cref="Columns"/> says.</summary>
public readonly record struct StyledText(string Text, CellStyle Style);
