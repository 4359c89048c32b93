namespace Clampwise.Fretboard.Tests;

/// <summary>
/// Tries every finger on every fretted string and throws out what a hand cannot do; only the prices are the project's own.
/// </summary>
internal static class NaiveFingering
{
    public static double LeastPoints(Voicing voicing, Hand hand, Neck neck)
    {
        (int Index, int Fret)[] fretted =
            [.. voicing.Fretting.Stops.Select((stop, i) => (i, stop.Finger?.Number ?? 0)).Where(pair => pair.Item2 > 0)];
        double least = double.PositiveInfinity;
        var fingers = new int[fretted.Length];
        for (int choice = 0; choice < 1 << (2 * fretted.Length); choice++)
        {
            for (int i = 0; i < fretted.Length; i++)
            {
                fingers[i] = 1 + ((choice >> (2 * i)) & 3);
            }

            if (Groups(voicing, fretted, fingers) is { } placed)
            {
                least = Math.Min(least, Points(placed, hand, neck, fretted.Length == 0 ? 0 : fretted.Min(pair => pair.Fret)));
            }
        }

        return least;
    }

    private static List<(Finger Finger, FingerGroup Group)>? Groups(Voicing voicing, (int Index, int Fret)[] fretted, int[] fingers)
    {
        int lowest = fretted.Length == 0 ? 0 : fretted.Min(pair => pair.Fret);
        var placed = new List<(Finger, FingerGroup)>();
        (int Fret, int Index) before = default;
        for (int finger = 1; finger <= 4; finger++)
        {
            (int Index, int Fret)[] own = [.. fretted.Where((_, i) => fingers[i] == finger)];
            if (own.Length == 0)
            {
                continue;
            }

            (int first, int last, int fret) = (own[0].Index, own[^1].Index, own[0].Fret);
            bool stoppedTwice = own.Any(pair => pair.Fret != fret)
                || fretted.Except(own).Any(pair => pair.Fret == fret && pair.Index > first && pair.Index < last);
            bool isBlocked = Enumerable.Range(first, last - first + 1).Any(i =>
                (voicing.Strings[i] is { Pitch: not null } s && s.StoppedAt.Number < fret) || ClampLiesAt(voicing, i, fret));
            if (stoppedTwice || isBlocked || (fret, first).CompareTo(before) < 0)
            {
                return null;
            }

            before = (fret, first);
            int edges = last == first ? 0 : new[] { first - 1, last + 1 }.Count(i =>
                i >= 0 && i < voicing.Strings.Length && voicing.Strings[i].Stop.IsRinging && voicing.Strings[i].Ground.Number < fret);
            placed.Add(((Finger)finger, new FingerGroup(fret - lowest, first, last, 0, edges)));
        }

        return placed;
    }

    private static bool ClampLiesAt(Voicing voicing, int index, int fret) =>
        voicing.Setup.Clamps.Any(clamp => clamp.Fret.Number == fret && clamp.Strings.Contains(voicing.Strings[index].Number));

    private static double Points(List<(Finger Finger, FingerGroup Group)> placed, Hand hand, Neck neck, int lowest)
    {
        double strain = placed.SelectMany((one, i) => placed.Take(i).Select(other =>
            neck.MillimetresBetween(Fret.Of(lowest + one.Group.Offset), Fret.Of(lowest + other.Group.Offset))
                / hand.SpreadMillimetres(other.Finger, one.Finger)))
            .DefaultIfEmpty(0.0).Max();
        return FingerCost.Total(FingerCost.Of([.. placed.Select(p => p.Group)], [.. placed.Select(p => p.Finger)]).Points, strain);
    }
}
