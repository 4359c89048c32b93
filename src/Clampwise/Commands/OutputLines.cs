using Clampwise.Look;

namespace Clampwise.Commands;

/// <summary>How wide lines of results may be: as the terminal, and never wider than is read with ease.</summary>
internal static class OutputLines
{
    private const int Most = 100;
    private const int Fewest = 60;
    private const int Indent = 2;

    /// <summary>Columns to use.</summary>
    public static int Width(Surroundings around) => Math.Clamp(around.Size()?.Columns ?? Most, Fewest, Most);

    /// <summary>A line that is too long broken at spaces; what follows the first piece is set in.</summary>
    public static IEnumerable<string> Wrap(string line, int width) => line.Length <= width
        ? [line]
        : Line.Wrap(line, width - Indent).Select((piece, index) => index == 0 ? piece.ToString() : new string(' ', Indent) + piece);
}
