namespace Clampwise.Streams;

/// <summary>A line of the input has no end within reason.</summary>
internal sealed class LineTooLongException(int most) : IOException($"a line of the input is longer than {most} characters: give one thing a line");
