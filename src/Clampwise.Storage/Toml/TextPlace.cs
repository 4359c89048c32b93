namespace Clampwise.Storage;

/// <summary>A place in a text.</summary>
/// <param name="Line">The line, counted from 1.</param>
/// <param name="Column">The column, counted from 1.</param>
public readonly record struct TextPlace(int Line, int Column);
