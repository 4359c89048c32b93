namespace Clampwise.Charts;

/// <summary>A piece of text of one kind. Every character is one column wide: the glyph sets hold no others.</summary>
/// <param name="Text">The text.</param>
/// <param name="Mark">What it is for.</param>
public readonly record struct MarkedText(string Text, Mark Mark);
