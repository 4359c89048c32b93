namespace Clampwise.Fretboard.Tests;

/// <summary>
/// The frettings of a space as bare numbers (-1 muted, 0 ringing, else a fret; the lowest string first), and the fingers that each
/// needs where any finger may barre, string by string; nothing is shared with the engine but the clamps of a setup.
/// </summary>
internal static class NaiveBarres
{
    public static IEnumerable<int[]> Frettings(Setup setup, FrettingSpace space) =>
        Enumerable.Range(0, space.MaxFret.Number + 1).SelectMany(lowest => WithLowest(setup, space, lowest));

    /// <summary>A finger for each fretted string that cannot share the finger of one before it.</summary>
    public static int Fingers(Setup setup, int[] frets, bool throughClamps)
    {
        int fingers = 0;
        for (int i = 0; i < frets.Length; i++)
        {
            fingers += frets[i] > 0 && !SharesFinger(setup, frets, i, throughClamps) ? 1 : 0;
        }

        return fingers;
    }

    private static IEnumerable<int[]> WithLowest(Setup setup, FrettingSpace space, int lowest)
    {
        int highest = lowest == 0 ? 0 : Math.Min(space.MaxFret.Number, lowest + space.Span - 1);
        IEnumerable<int[]> all = [[]];
        for (int i = 0; i < setup.StringCount; i++)
        {
            int ground = Clamps(setup, i).DefaultIfEmpty().Max();
            int[] stops = [-1, 0, .. Enumerable.Range(1, space.MaxFret.Number).Where(fret => fret >= lowest && fret <= highest && fret > ground)];
            all = all.SelectMany(before => stops.Select(stop => (int[])[.. before, stop]));
        }

        return all.Where(frets => frets.Max() >= 0 && frets.Where(fret => fret > 0).DefaultIfEmpty().Min() == lowest);
    }

    // Looks down from a string for another at its fret, until something is in the way.
    private static bool SharesFinger(Setup setup, int[] frets, int index, bool throughClamps)
    {
        int fret = frets[index];
        for (int i = index - 1; i >= 0 && frets[i] != fret; i--)
        {
            int[] clamps = [.. Clamps(setup, i)];
            int stoppedAt = frets[i] > 0 ? frets[i] : clamps.DefaultIfEmpty().Max();
            bool soundsFromBehind = frets[i] >= 0 && stoppedAt < fret;
            if (soundsFromBehind || (!throughClamps && clamps.Contains(fret)))
            {
                return false;
            }
        }

        return Array.IndexOf(frets, fret) < index;
    }

    private static IEnumerable<int> Clamps(Setup setup, int index) => setup.Clamps
        .Where(clamp => clamp.Strings.Contains(StringNumber.Of(setup.StringCount - index)))
        .Select(clamp => clamp.Fret.Number);
}
