using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>The cheapest way for a hand to finger a voicing: which finger goes where, how far it reaches, and what makes it hard.</summary>
public sealed class Fingering
{
    private Fingering(Voicing voicing, Hand hand, Neck neck, ImmutableArray<FingerPlacement> placements, ImmutableArray<Price> prices)
    {
        Voicing = voicing;
        Hand = hand;
        Placements = placements;
        Prices = prices;
        (Fret lowest, Fret highest) = FrettedRange(voicing.Fretting);
        ReachMillimetres = neck.MillimetresBetween(lowest, highest);
    }

    /// <summary>The voicing that is fingered.</summary>
    public Voicing Voicing { get; }

    /// <summary>The hand that fingers it.</summary>
    public Hand Hand { get; }

    /// <summary>The fingers in their places: T first, then 1 to 4; empty if every string rings or is muted.</summary>
    public ImmutableArray<FingerPlacement> Placements { get; }

    /// <summary>What makes it hard, point by point; they add up to the difficulty.</summary>
    public ImmutableArray<Price> Prices { get; }

    /// <summary>From the lowest fretted fret to the highest, along the neck.</summary>
    public double ReachMillimetres { get; }

    /// <summary>How hard it is, in points: 0 with no finger down, about one for each finger in an easy place.</summary>
    public double Difficulty => Prices.Sum(price => price.Points);

    /// <summary>The fingers that stop more than one string.</summary>
    public IEnumerable<FingerPlacement> Barres => Placements.Where(placement => placement.IsBarre);

    /// <summary>The finger that stops a string; none if it rings or is muted.</summary>
    public Finger FingerOn(StringNumber number) =>
        Placements.FirstOrDefault(placement => placement.Strings.Contains(number))?.Finger ?? Finger.None;

    /// <summary>The finger on each string, lowest string first, for drawing.</summary>
    public ImmutableArray<Finger> ByString => [.. Voicing.Setup.Strings.Select(FingerOn)];

    /// <summary>
    /// The cheapest fingering, or why there is none: too many fingers needed, too far a reach, or two fingers that must spread too far.
    /// </summary>
    /// <param name="voicing">What to finger.</param>
    /// <param name="hand">The hand; a medium one if null.</param>
    /// <param name="neck">The neck; 648 mm if null.</param>
    public static Result<Fingering> Of(Voicing voicing, Hand? hand = null, Neck? neck = null)
    {
        (hand, neck) = (hand ?? Hand.Medium, neck ?? Neck.Usual);
        (ulong pattern, int lowest) = StopPattern.Of(voicing.Setup, voicing.Fretting);
        var search = new FingerSearch(voicing.Setup.StringCount, hand.UsesThumb, ClampBars.Of(voicing.Setup, lowest, Fret.Last));
        var cheapest = new CheapestVisitor(neck.Remaining(lowest) / hand.SpanMillimetres);
        search.Visit(pattern, ref cheapest);
        if (cheapest.Best is not { } best)
        {
            return WhyNot(voicing, hand, neck, search.FewestFingers(pattern), cheapest.LeastStrained);
        }

        int count = voicing.Setup.StringCount;
        StringSet StringsOf(int bits) => StringSet.Of(voicing.Setup.Strings.Where(number => ((bits >> number.IndexAmong(count)) & 1) == 1));
        IEnumerable<FingerPlacement> placements = best.Groups.Select((group, i) => new FingerPlacement(
            best.Fingers[i],
            Fret.Of(lowest + group.Offset),
            StringsOf(group.Bits),
            StringsOf(((1 << group.Width) - 1) << group.First)));
        return new Fingering(voicing, hand, neck, [.. placements], FingeringWords.Prices(voicing, best));
    }

    /// <summary>In one line: <c>1 at fret 2 across strings 1-5, 3 at fret 4 on string 4</c>, or <c>no finger</c>.</summary>
    public override string ToString() => Placements.IsEmpty ? "no finger" : string.Join(", ", Placements.Select(FingeringWords.Place));

    private static (Fret Lowest, Fret Highest) FrettedRange(Fretting fretting)
    {
        Fret[] fretted = [.. fretting.Stops.Where(stop => stop.IsFretted).Select(stop => stop.Finger!.Value)];
        return fretted.Length == 0 ? (Fret.Nut, Fret.Nut) : (fretted.Min(), fretted.Max());
    }

    private static Fault WhyNot(Voicing voicing, Hand hand, Neck neck, int fewest, CheapestVisitor.Assignment? leastStrained)
    {
        (Fret lowest, Fret highest) = FrettedRange(voicing.Fretting);
        double reach = neck.MillimetresBetween(lowest, highest);
        if (leastStrained is not { } assignment)
        {
            return FretboardWords.TooManyFingers(fewest);
        }

        return reach > hand.SpanMillimetres
            ? FretboardWords.ReachTooFar(reach, lowest, highest, hand)
            : FretboardWords.SpreadTooFar(assignment.WidestPair(lowest, neck, hand), hand, neck);
    }
}
