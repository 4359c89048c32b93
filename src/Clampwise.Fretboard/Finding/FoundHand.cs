using System.Collections.Immutable;

namespace Clampwise.Fretboard;

/// <summary>A hand that fits a query: the voicing with the most strings that its fingers sound, and its thinnings that fit too.</summary>
/// <param name="Whole">The hand with all its strings.</param>
/// <param name="Thinnings">The same hand with strings muted, best first.</param>
public sealed record FoundHand(FoundVoicing Whole, ImmutableArray<FoundVoicing> Thinnings)
{
    // From a barre across six strings to the small hand above it, and not from two fingers to one (our judgement).
    private const double EasierByPoints = 1.5;

    /// <summary>For each thinning of the same name the strings that it mutes beyond the whole hand.</summary>
    public IEnumerable<StringSet> WithoutStrings => Thinnings
        .Where(thinning => thinning.Voicing.SoundingName == Whole.Voicing.SoundingName)
        .Select(thinning => Sounding(Whole).Except(Sounding(thinning)));

    /// <summary>Single strings that may be left out, in words: <c>also without string 6, 1</c>; empty if none may.</summary>
    public string AlsoWithout
    {
        get
        {
            string[] single = [.. WithoutStrings.Where(strings => strings.Count == 1).Select(strings => $"{strings}").OrderDescending(StringComparer.Ordinal)];
            return single.Length > 0 ? $"also without string {string.Join(", ", single)}"
                : WithoutStrings.Any() ? $"also without {Spoken.Strings(WithoutStrings.First())}"
                : "";
        }
    }

    /// <summary>Voicings in order, folded; a hand ranks by itself, with all its strings.</summary>
    internal static ImmutableArray<FoundHand> Fold(IReadOnlyList<FoundVoicing> inOrder)
    {
        var hands = new List<List<FoundVoicing>>();
        foreach (FoundVoicing found in inOrder)
        {
            // The first member of each hand is its fullest so far.
            List<FoundVoicing>? hand = hands.FirstOrDefault(members => IsThinning(found, members[0]) || IsThinning(members[0], found));
            if (hand is null)
            {
                hands.Add([found]);
            }
            else
            {
                hand.Insert(IsThinning(hand[0], found) ? 0 : hand.Count, found);
            }
        }

        return [.. hands.Select(members => new FoundHand(members[0], [.. members.Skip(1).OrderBy(member => member.Score)])).OrderBy(hand => hand.Whole.Score)];
    }

    /// <summary>
    /// True if one is the other with strings muted and the same bass, and no string is stopped otherwise. Where muting makes it easier by
    /// as much as a barre costs, it is a hand of its own: the small F is no thinning of the barre.
    /// </summary>
    internal static bool IsThinning(FoundVoicing thin, FoundVoicing whole)
    {
        bool isWithin = thin.Voicing.Fretting.Stops.Zip(whole.Voicing.Fretting.Stops).All(pair => pair.First == pair.Second || pair.First.IsMuted);
        return isWithin && thin.Voicing.Fretting != whole.Voicing.Fretting
            && thin.Voicing.Pitches.Min().Class == whole.Voicing.Pitches.Min().Class
            && whole.Fingering.Difficulty - thin.Fingering.Difficulty < EasierByPoints;
    }

    private static StringSet Sounding(FoundVoicing found) =>
        StringSet.Of(found.Voicing.Strings.Where(sounding => sounding.Pitch is not null).Select(sounding => sounding.Number));
}
