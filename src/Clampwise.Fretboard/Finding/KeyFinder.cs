using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>Makes the page of a key from what a search found: hands for each degree, and what is near where the chord itself is hard.</summary>
internal sealed class KeyFinder(Setup setup, RowReader rows, KeySearch search, KeyRanks ranks, Func<FoldedHand, FoundHand> unpack)
{
    private const int HandsEach = 3;

    // From here on a chord is hard, and what comes so much easier is worth a word (our judgement).
    private const int ManyFingers = 4;
    private const double HardPoints = 5.0;
    private const double EasierBy = 0.8;

    // A second or third hand so much worse than the first is not worth a line.
    private const double WorthShowing = 5.0;
    private const int ColoursLookedAt = 8;

    public KeyHands Page => new(setup.Key, setup.SoundingKey, [.. KeyDegree.Of(setup.Key).Select(Degree)]);

    private DegreeHands Degree(KeyDegree degree)
    {
        ImmutableArray<FoundHand> hands = [.. Choose(chord => ranks.PlainDegree(chord) == degree, HandsEach)];
        FoundHand? best = hands.FirstOrDefault();
        IEnumerable<FoundHand> colours = best is null || IsHard(best.Whole) ? Choose(chord => ranks.ColouredDegree(chord) == degree, ColoursLookedAt) : [];
        FoundHand? near = colours.FirstOrDefault(colour => IsOver(degree.In(setup.SoundingKey), colour.Whole.Voicing) && IsEasier(colour, best));
        return new DegreeHands(degree, degree.In(setup.Key), degree.In(setup.SoundingKey), [.. hands.Where(hand => hand.Whole.Score <= best!.Whole.Score + WorthShowing)], near);
    }

    private static bool IsHard(FoundVoicing found) =>
        found.Fingering.Placements.Length >= ManyFingers || found.Fingering.Difficulty >= HardPoints;

    private static bool IsEasier(FoundHand colour, FoundHand? plain) =>
        plain is null || colour.Whole.Fingering.Difficulty <= plain.Whole.Fingering.Difficulty - EasierBy;

    // Which reading comes first can depend on the exact pitches: the colour must be named from the degree's root.
    private static bool IsOver(ChordSymbol plain, Voicing colour) =>
        colour.Sounding.First is { Quality: not null } first && first.Root == plain.Root.Class && first.Bass == first.Root;

    private IEnumerable<FoundHand> Choose(Func<int, bool> isWanted, int limit)
    {
        List<FoldedHand> hands = new HandFolder(setup.StringCount).Fold(search.KeptOf(isWanted));
        return new HandChooser(rows, setup.HomeFret.Number, isNamed: true).Choose(hands, limit).Select(unpack);
    }
}
