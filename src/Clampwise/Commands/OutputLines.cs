using System.Globalization;
using Clampwise.Look;

namespace Clampwise.Commands;

/// <summary>How wide lines of results may be: as the terminal or COLUMNS says; all that they need in a pipe.</summary>
internal static class OutputLines
{
    // Narrower than this nothing is laid out well; a terminal breaks the lines by itself then.
    private const int Fewest = 40;
    private const int Indent = 2;

    /// <summary>Columns to use: COLUMNS goes before the terminal's own width (POSIX, Environment Variables).</summary>
    public static int Width(Surroundings around) =>
        int.TryParse(around.Variable("COLUMNS"), NumberStyles.None, CultureInfo.InvariantCulture, out int columns) && columns > 0 ? Math.Max(columns, Fewest)
        : around.Size() is { Columns: > 0 and var wide } ? Math.Max(wide, Fewest)
        : int.MaxValue;

    /// <summary>A line that is too long broken at spaces; what follows the first piece is set in.</summary>
    public static IEnumerable<string> Wrap(string line, int width, int indent = Indent) => line.Length <= width
        ? [line]
        : Pieces(line, width, indent);

    /// <summary>Writes lines, each broken at spaces where it is too long.</summary>
    public static int PrintLines(this Surroundings around, IEnumerable<string> lines, int indent = Indent)
    {
        int width = Width(around);
        foreach (string line in lines.SelectMany(line => Wrap(line, width, indent)))
        {
            around.Out.WriteLine(line);
        }

        return ExitCode.Good;
    }

    // The columns before the indent keep their spaces, so that tables stand.
    private static IEnumerable<string> Pieces(string line, int width, int indent)
    {
        int head = Math.Min(indent == Indent ? 0 : indent, line.Length);
        return Line.Wrap(line[head..], width - indent).Select((piece, index) => index == 0 ? line[..head] + piece : new string(' ', indent) + piece);
    }
}
