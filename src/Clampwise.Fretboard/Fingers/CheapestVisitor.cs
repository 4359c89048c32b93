namespace Clampwise.Fretboard;

/// <summary>
/// Keeps the cheapest assignment within the hand's reach, the first of equals, and the least strained one for saying why none is.
/// </summary>
/// <param name="strainScale">What remains of the string at the lowest fretted fret, as a multiple of the hand's span.</param>
internal struct CheapestVisitor(double strainScale) : FingerSearch.IVisitor
{
    private double _bestPoints = double.PositiveInfinity;
    private double _leastStrain = double.PositiveInfinity;

    /// <summary>The cheapest; null if every one strains the hand too far, or there is none.</summary>
    public Assignment? Best { get; private set; }

    /// <summary>The least strained one, within reach or not; null if there is none.</summary>
    public Assignment? LeastStrained { get; private set; }

    /// <summary>Fingers in their places, what they cost, and the part of its reach that the most strained pair needs.</summary>
    public sealed record Assignment(FingerGroup[] Groups, Finger[] Fingers, FingerCost Cost, double Strain)
    {
        /// <summary>The pair of fingers that must spread farthest for what it can.</summary>
        public FingerPair WidestPair(Fret lowest, Neck neck, Hand hand)
        {
            IEnumerable<FingerPair> pairs = Groups.SelectMany((higher, i) => Groups.Take(i).Select((lower, j) =>
                new FingerPair(Fingers[j], Fret.Of(lowest.Number + lower.Offset), Fingers[i], Fret.Of(lowest.Number + higher.Offset))));
            return pairs.MaxBy(pair => pair.Millimetres(neck) / hand.SpreadMillimetres(pair.One, pair.Other))!;
        }
    }

    public void Visit(ReadOnlySpan<FingerGroup> groups, ReadOnlySpan<Finger> fingers)
    {
        var cost = FingerCost.Of(groups, fingers);
        double strain = cost.Strain * strainScale;
        double points = FingerCost.Total(cost.Points, strain);
        bool isBest = points < _bestPoints;
        bool isLeast = strain < _leastStrain;
        if (!isBest && !isLeast)
        {
            return;
        }

        var assignment = new Assignment(groups.ToArray(), fingers.ToArray(), cost, strain);
        (Best, _bestPoints) = isBest ? (assignment, points) : (Best, _bestPoints);
        (LeastStrained, _leastStrain) = isLeast ? (assignment, strain) : (LeastStrained, _leastStrain);
    }
}
