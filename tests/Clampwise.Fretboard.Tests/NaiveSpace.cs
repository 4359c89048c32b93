namespace Clampwise.Fretboard.Tests;

/// <summary>
/// Every fretting of a small space by trying everything and throwing out what does not fit, and the counting rules word by word.
/// </summary>
internal static class NaiveSpace
{
    public static IEnumerable<Fretting> Frettings(Setup setup, FrettingSpace space)
    {
        IEnumerable<int[]> all = [[]];
        for (int index = 0; index < setup.StringCount; index++)
        {
            int ground = setup.GroundAt(index).Number;
            int[] stops = [-1, 0, .. Enumerable.Range(1, space.MaxFret.Number).Where(fret => fret > ground)];
            all = all.SelectMany(before => stops.Select(stop => before.Append(stop).ToArray()));
        }

        return all.Where(frets => frets.Any(fret => fret >= 0) && IsInSpan(frets, space.Span)).Select(ToFretting);
    }

    public static bool Passes(Setup setup, Fretting fretting, FrettingCounter rules)
    {
        int[] frets = [.. fretting.Stops.Select(stop => stop.IsMuted ? -1 : stop.Finger?.Number ?? 0)];
        int[] sounding = [.. Enumerable.Range(0, frets.Length).Where(i => frets[i] >= 0)];
        bool isUnbroken = sounding[^1] - sounding[0] + 1 == sounding.Length;
        int[] atFrets = [.. frets.Where(fret => fret > 0).Distinct().Order()];
        int fingers = rules.Barres == BarreRule.Any
            ? atFrets.Sum(fret => Runs(setup, frets, fret).Count)
            : atFrets.Length == 0 ? 0 : frets.Count(fret => fret > 0) - Runs(setup, frets, atFrets[0]).Max() + 1;
        return sounding.Length >= rules.MinStrings && (isUnbroken || !rules.Unbroken) && fingers <= rules.Fingers;
    }

    private static bool IsInSpan(int[] frets, int span) =>
        frets.Where(fret => fret > 0).DefaultIfEmpty(1).Max() - frets.Where(fret => fret > 0).DefaultIfEmpty(1).Min() < span;

    private static Fretting ToFretting(int[] frets) => Fretting.Of(
        [.. frets.Select(fret => fret < 0 ? StringStop.Muted : fret == 0 ? StringStop.Ringing : StringStop.At(Fret.Of(fret)))]);

    // How many strings each run at a fret has.
    private static List<int> Runs(Setup setup, int[] frets, int fret)
    {
        var runs = new List<int>();
        bool isOpen = false;
        for (int i = 0; i < frets.Length; i++)
        {
            if (frets[i] == fret)
            {
                runs.Add(isOpen ? runs[^1] + 1 : 1);
                if (isOpen)
                {
                    runs.RemoveAt(runs.Count - 2);
                }

                isOpen = true;
            }
            else if (frets[i] >= 0 && Math.Max(frets[i], frets[i] == 0 ? setup.GroundAt(i).Number : 0) < fret)
            {
                isOpen = false;
            }
        }

        return runs;
    }
}
