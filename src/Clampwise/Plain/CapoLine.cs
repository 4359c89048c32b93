using System.Globalization;
using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Plain;

/// <summary>Reads where the full capo goes: <c>capo up</c>, <c>capo down 2</c>, <c>capo at 3</c>, <c>capo off</c>.</summary>
internal static class CapoLine
{
    /// <summary>By how many frets it moves, up or, below 0, down.</summary>
    public static Result<int> Read(TypedLine line, Setup setup)
    {
        int now = setup.RigFret.Number;
        string way = line.Words.Count > 1 ? line.Words[1].Plain : "";
        switch (way)
        {
            case "off":
                return -now;
            case "up" or "down":
                return Number(line, 2, orElse: 1).Select(frets => way == "up" ? frets : -frets);
            case "at":
                return Number(line, 2, orElse: null).Select(fret => fret - now);
            default:
                return new Fault($"expected up, down, at and a fret, or off, found {(way.Length == 0 ? "nothing" : $"'{line.Words[1].Text}'")}", line.Words.Count > 1 ? line.Words[1].Column : line.EndColumn);
        }
    }

    private static Result<int> Number(TypedLine line, int index, int? orElse)
    {
        if (index >= line.Words.Count)
        {
            return orElse is { } number ? number : new Fault("expected a fret, found nothing", line.EndColumn);
        }

        return int.TryParse(line.Words[index].Plain, NumberStyles.None, CultureInfo.InvariantCulture, out int read)
            ? read
            : new Fault($"expected a number of frets, found '{line.Words[index].Text}'", line.Words[index].Column);
    }
}
