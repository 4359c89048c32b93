using System.Numerics;

namespace Clampwise.Fretboard;

/// <summary>
/// Folds voicings into hands. A thinning has the bass of its hand, and every string that sounds is stopped alike. Where leaving strings
/// out frees the hand for good it is a hand of its own: soon where the low strings are left out, as the small F above the barre,
/// hardly ever where the top is, because players look for the full form first (our judgement).
/// </summary>
internal sealed class HandFolder(int stringCount)
{
    // From a finger less to a flatter barre; from a hand that few can hold to one that all can.
    private const double SavedBelow = 0.75;
    private const double SavedElsewhere = 3.0;

    private readonly Dictionary<int, List<FoldedHand>> _byTwoStops = [];

    /// <summary>The hands of some voicings, the fullest first.</summary>
    public List<FoldedHand> Fold(IEnumerable<Candidate> voicings)
    {
        var hands = new List<FoldedHand>();
        foreach (Candidate voicing in voicings.OrderByDescending(one => Count(one.Voicing)).ThenBy(one => one.Voicing.Difficulty).ThenBy(one => one.Voicing.Bits))
        {
            FoldedHand? hand = Alike(voicing.Voicing).FirstOrDefault(full => IsThinning(voicing.Voicing, full.Whole.Voicing, stringCount));
            if (hand is not null)
            {
                hand.Thinnings.Add(voicing);
                continue;
            }

            hand = new FoldedHand(voicing, []);
            hands.Add(hand);
            Keep(hand);
        }

        return hands;
    }

    /// <summary>True if one is the other with strings muted, and not so much easier that it is a hand of its own.</summary>
    public static bool IsThinning(PackedVoicing thin, PackedVoicing full, int stringCount)
    {
        int thinSounding = PackedVoicing.SoundingBits(thin.Stops, stringCount);
        int left = PackedVoicing.SoundingBits(full.Stops, stringCount) & ~thinSounding;
        if (left == 0 || thin.BassClass != full.BassClass || !IsWithin(thin, full, stringCount))
        {
            return false;
        }

        bool isBelow = left < (thinSounding & -thinSounding);
        double saved = FingersAlone(full, stringCount) - FingersAlone(thin, stringCount);
        return saved < (isBelow ? SavedBelow : SavedElsewhere);
    }

    private static bool IsWithin(PackedVoicing thin, PackedVoicing full, int stringCount)
    {
        for (int index = 0; index < stringCount; index++)
        {
            int stop = thin.StopAt(index);
            if (stop != 0 && stop != full.StopAt(index))
            {
                return false;
            }
        }

        return true;
    }

    private static double FingersAlone(PackedVoicing voicing, int stringCount)
    {
        int sounding = PackedVoicing.SoundingBits(voicing.Stops, stringCount);
        int across = BitOperations.Log2((uint)sounding) - BitOperations.TrailingZeroCount(sounding) + 1;
        return voicing.Difficulty - ((across - BitOperations.PopCount((uint)sounding)) * FingerPrices.MutedInside);
    }

    private int Count(PackedVoicing voicing) => BitOperations.PopCount((uint)PackedVoicing.SoundingBits(voicing.Stops, stringCount));

    // Whatever holds a voicing has its two lowest stops too: few hands have, so that few are compared.
    private List<FoldedHand> Alike(PackedVoicing voicing)
    {
        int sounding = PackedVoicing.SoundingBits(voicing.Stops, stringCount);
        int first = BitOperations.TrailingZeroCount(sounding);
        int rest = sounding & (sounding - 1);
        int second = rest == 0 ? first : BitOperations.TrailingZeroCount(rest);
        return _byTwoStops.TryGetValue(Place(voicing, first, second), out List<FoldedHand>? hands) ? hands : [];
    }

    private void Keep(FoldedHand hand)
    {
        for (int second = 0; second < stringCount; second++)
        {
            for (int first = 0; first <= second; first++)
            {
                if (hand.Whole.Voicing.StopAt(first) != 0 && hand.Whole.Voicing.StopAt(second) != 0)
                {
                    int place = Place(hand.Whole.Voicing, first, second);
                    if (!_byTwoStops.TryGetValue(place, out List<FoldedHand>? hands))
                    {
                        _byTwoStops.Add(place, hands = []);
                    }

                    hands.Add(hand);
                }
            }
        }
    }

    private static int Place(PackedVoicing voicing, int first, int second) =>
        (((((first << 3) | second) << PackedVoicing.BitsEach) | voicing.StopAt(first)) << PackedVoicing.BitsEach) | voicing.StopAt(second);
}
