using Clampwise.Fretboard;

namespace Clampwise.Charts;

/// <summary>The numbers beside the frets of a setup, counted as the player likes it.</summary>
/// <param name="setup">The setup.</param>
/// <param name="count">Where to count from; without a home clamp always from the nut.</param>
internal sealed class FretNumbers(Setup setup, FretCount count)
{
    /// <summary>The heading of a count from the home clamp.</summary>
    public const string ClampLabel = "clamp";

    private readonly FretCount _count = setup.HomeFret > Fret.Nut ? count : FretCount.Nut;

    /// <summary>Rows of numbers on a board that lies.</summary>
    public int Rows => _count == FretCount.Both ? 2 : 1;

    /// <summary>The heading of the main count.</summary>
    public string Label => _count == FretCount.Clamp ? ClampLabel : "fret";

    /// <summary>A fret in the main count; negative behind the home clamp.</summary>
    public string Main(Fret fret) => _count == FretCount.Clamp ? $"{setup.FromHome(fret)}" : $"{fret}";

    /// <summary>A fret counted from the home clamp; empty behind it.</summary>
    public string FromClamp(Fret fret) => fret < setup.HomeFret ? "" : $"{setup.FromHome(fret)}";

    /// <summary>All of it for a board that stands: <c>4 = 2</c> is the fourth fret, two above the home clamp.</summary>
    public string Both(Fret fret) => _count == FretCount.Both && FromClamp(fret) is { Length: > 0 } home ? $"{fret,2} ={home,2}" : $"{Main(fret),2}";

    /// <summary>True where makers put markers (common practice, no source).</summary>
    public static bool HasMarker(Fret fret) => (fret.Number % 12) is 3 or 5 or 7 or 9 or 0;

    /// <summary>True where they put two.</summary>
    public static bool IsOctave(Fret fret) => fret.Number % 12 == 0;
}
