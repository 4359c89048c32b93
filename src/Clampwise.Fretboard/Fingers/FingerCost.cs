namespace Clampwise.Fretboard;

/// <summary>
/// What an assignment of fingers costs. The points do not depend on where on the neck it lies; the strain shrinks with the frets, so
/// that one sum serves every position: the strain at a fret is the strain here times scale / span * 2^(-fret / 12).
/// </summary>
/// <param name="Fingers">Points for placing the fingers.</param>
/// <param name="Barres">Points for barres.</param>
/// <param name="Spread">Points for fingers that lie apart or crowd, along and across the neck.</param>
/// <param name="Strain">The largest part of its reach that a pair of fingers needs, at a scale as long as the span, from the nut.</param>
internal readonly record struct FingerCost(double Fingers, double Barres, double Spread, double Strain)
{
    private static readonly double[] s_remaining = [.. Enumerable.Range(0, Fret.Last + 1).Select(offset => Math.Pow(2.0, offset / -12.0))];

    public double Points => Fingers + Barres + Spread;

    /// <summary>Points with those for the spread of the hand; infinite beyond its reach.</summary>
    /// <param name="points">The points for the fingers.</param>
    /// <param name="strain">The part of its reach that the most strained pair needs, here on the neck.</param>
    public static double Total(double points, double strain) => strain <= 1.0 ? points + StrainPoints(strain) : double.PositiveInfinity;

    /// <summary>Points for the spread of the hand.</summary>
    public static double StrainPoints(double strain) => FingerPrices.FullSpread * strain * strain;

    public static FingerCost Of(ReadOnlySpan<FingerGroup> groups, ReadOnlySpan<Finger> fingers)
    {
        double placing = 0.0, barres = 0.0, spread = 0.0, strain = 0.0;
        int before = -1, barre = -1;
        for (int i = 0; i < groups.Length; i++)
        {
            placing += FingerPrices.Finger[(int)fingers[i]];
            if (groups[i].IsBarre)
            {
                barres += BarrePoints(groups[i], fingers[i]) + (barre >= 0 ? SecondBarrePoints(groups[barre], fingers[barre], groups[i], fingers[i]) : 0.0);
                barre = i;
            }

            for (int j = 0; j < i; j++)
            {
                double apart = Math.Abs(s_remaining[groups[i].Offset] - s_remaining[groups[j].Offset]);
                strain = Math.Max(strain, apart / Hand.PartOfSpan(fingers[j], fingers[i]));
            }

            if (fingers[i] != Finger.Thumb)
            {
                spread += before >= 0 ? SpreadPoints(groups[before], fingers[before], groups[i], fingers[i]) : 0.0;
                before = i;
            }
        }

        return new FingerCost(placing, barres, spread, strain);
    }

    private static double BarrePoints(FingerGroup group, Finger finger) =>
        FingerPrices.Barre[(int)finger] + ((group.Width - 2) * FingerPrices.BarreString) + (group.Edges * FingerPrices.BarreEdge);

    private static double SecondBarrePoints(FingerGroup lower, Finger lowerFinger, FingerGroup higher, Finger higherFinger) =>
        lowerFinger == Finger.Index && higherFinger >= Finger.Ring && higher.First >= lower.First && higher.Last <= lower.Last
            ? 0.0
            : FingerPrices.SecondBarre;

    private static double SpreadPoints(FingerGroup lower, Finger lowerFinger, FingerGroup higher, Finger higherFinger)
    {
        int frets = higher.Offset - lower.Offset - ((int)higherFinger - (int)lowerFinger);
        int strings = Math.Max(0, lower.StringsTo(higher) - 2);
        return (frets > 0 ? frets * FingerPrices.StretchedFret : -frets * FingerPrices.CrowdedFret) + (strings * FingerPrices.AcrossString);
    }
}
