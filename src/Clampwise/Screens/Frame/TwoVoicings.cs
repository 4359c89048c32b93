using Clampwise.Charts;
using Clampwise.Fretboard;
using Clampwise.Look;

namespace Clampwise.Screens;

/// <summary>Two voicings of one setup on one fretboard, with what differs in words.</summary>
/// <param name="comparison">The voicings.</param>
/// <param name="first">What the first is called.</param>
/// <param name="second">What the second is called.</param>
internal sealed class TwoVoicings(VoicingComparison comparison, string first, string second)
{
    /// <summary>Both drawn, the strings that differ pointed at; beside each string what the first sounds.</summary>
    public FretboardPicture Picture => new(comparison.First.Setup, comparison.First.Fretting)
    {
        Other = comparison.Second.Fretting,
        Marked = comparison.Moved,
        Notes = VoicingNotes.Of(comparison.First),
    };

    /// <summary>What the glyphs mean, then a line for each string that differs; run together if there are too few rows.</summary>
    public IEnumerable<Line> Words(GlyphSet glyphs, int width, int rows)
    {
        string[] lines = [.. comparison.Lines(first, second).Reverse()];
        Line[] apart = [.. lines.SelectMany(line => Line.Wrap(line, width))];
        return
        [
            FretboardDrawing.LegendOfTwo(glyphs, first, second).OnScreen(),
            .. apart.Length < rows ? apart : Line.Wrap(string.Join("; ", lines), width),
        ];
    }
}
