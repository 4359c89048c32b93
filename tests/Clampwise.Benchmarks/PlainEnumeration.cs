using Clampwise.Fretboard;

namespace Clampwise.Benchmarks;

/// <summary>Every fretting by one loop a string, with nothing shared and nothing kept: what the index is measured against.</summary>
internal static class PlainEnumeration
{
    public static int Count(Setup setup, int maxFret, int span)
    {
        int[] grounds = [.. Enumerable.Range(0, setup.StringCount).Select(index => setup.GroundAt(index).Number)];
        return Count(grounds, new int[grounds.Length], 0, maxFret, span);
    }

    private static int Count(int[] grounds, int[] frets, int index, int maxFret, int span)
    {
        if (index == frets.Length)
        {
            return IsInSpan(frets, span) ? 1 : 0;
        }

        int count = 0;
        for (int fret = -1; fret <= maxFret; fret++)
        {
            if (fret <= 0 || fret > grounds[index])
            {
                frets[index] = fret;
                count += Count(grounds, frets, index + 1, maxFret, span);
            }
        }

        return count;
    }

    private static bool IsInSpan(int[] frets, int span)
    {
        (int lowest, int highest, bool sounds) = (int.MaxValue, 0, false);
        foreach (int fret in frets)
        {
            sounds |= fret >= 0;
            lowest = fret > 0 ? Math.Min(lowest, fret) : lowest;
            highest = Math.Max(highest, fret);
        }

        return sounds && (highest == 0 || highest - lowest < span);
    }
}
