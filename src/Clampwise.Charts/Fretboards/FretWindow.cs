using Clampwise.Fretboard;

namespace Clampwise.Charts;

/// <summary>The frets that a drawing shows.</summary>
/// <param name="First">The first; above 1 the neck between the nut and it is left out.</param>
/// <param name="Count">How many.</param>
public readonly record struct FretWindow(int First, int Count)
{
    // Zoom goes through these; 12 and 24 are the octaves, 19 is where many necks end (common practice, no source).
    private static readonly int[] s_steps = [4, 5, 7, 9, 12, 15, 19, Fret.Last];

    /// <summary>The frets.</summary>
    public IEnumerable<Fret> Frets => Enumerable.Range(First, Count).Select(Fret.Of);

    /// <summary>True if the window does not begin at the nut.</summary>
    public bool IsBroken => First > 1;

    /// <summary>
    /// So many frets, from the nut where all that is needed is then seen. Else the highest fret with something on it is seen, and the
    /// cursor; then the lowest; then the frets beyond to play in.
    /// </summary>
    public static FretWindow Around(FretboardPicture picture, int count)
    {
        count = Math.Clamp(count, 1, Fret.Last);
        (int low, int high) = picture.Busy;
        int first = Math.Max(Math.Max(1, high - count + 1), Math.Min(low, picture.LastFret - count + 1));
        int cursor = picture.Cursor?.Fret.Number ?? 0;
        return new FretWindow(cursor > 0 ? Math.Min(first, cursor) : first, count);
    }

    /// <summary>The next count with fewer frets, each larger.</summary>
    public static int Closer(int count) => s_steps.LastOrDefault(step => step < count, s_steps[0]);

    /// <summary>The next count with more frets.</summary>
    public static int Wider(int count) => s_steps.FirstOrDefault(step => step > count, s_steps[^1]);
}
