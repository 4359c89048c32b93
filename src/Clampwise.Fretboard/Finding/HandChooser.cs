using System.Runtime.InteropServices;

namespace Clampwise.Fretboard;

/// <summary>
/// Chooses the hands of a list, best first, and keeps it diverse: what is much like a hand before it stands back a little, and hands
/// that differ in an open string alone share one line. A familiar grip keeps a line of its own.
/// </summary>
/// <param name="rows">Reads the voicings.</param>
/// <param name="homeFret">The fret of the home clamp.</param>
/// <param name="isNamed">True if a chord was asked for; otherwise the list should hold many.</param>
internal sealed class HandChooser(RowReader rows, int homeFret, bool isNamed)
{
    // Another hand at the same place with the same outer notes; one more hand of a chord that is there already (our judgement).
    private const double Alike = 0.4;
    private const double SameChord = 2.0;

    private readonly Dictionary<(int Index, ulong Stops, int Top), List<FoldedHand>> _byAllButOne = [];
    private readonly Dictionary<(int Lowest, int Bottom, int Top), int> _places = [];
    private readonly Dictionary<int, int> _chords = [];

    /// <summary>The best so many hands, in order.</summary>
    public List<FoldedHand> Choose(IReadOnlyList<FoldedHand> hands, int limit)
    {
        var waiting = new PriorityQueue<FoldedHand, (double Score, ulong Bits)>();
        foreach (FoldedHand hand in hands)
        {
            waiting.Enqueue(hand, (hand.Whole.Score, hand.Whole.Voicing.Bits));
            Keep(hand);
        }

        var chosen = new List<FoldedHand>();
        var gone = new HashSet<FoldedHand>(ReferenceEqualityComparer.Instance);
        while (chosen.Count < limit && waiting.TryDequeue(out FoldedHand? hand, out (double Score, ulong Bits) place))
        {
            // What it stands back by only grows, so that the first whose score still holds is the best.
            double score = hand.Whole.Score + StandingBack(hand.Whole.Voicing);
            if (score > place.Score)
            {
                waiting.Enqueue(hand, (score, place.Bits));
            }
            else if (gone.Add(hand))
            {
                chosen.Add(hand);
                Count(hand.Whole.Voicing);
                hand.Variants.AddRange(VariantsOf(hand).Where(gone.Add));
            }
        }

        return chosen;
    }

    private double StandingBack(PackedVoicing voicing) =>
        (_places.GetValueOrDefault(PlaceOf(voicing)) > 0 ? Alike : 0.0)
        + (isNamed ? 0.0 : _chords.GetValueOrDefault(voicing.Classes) * SameChord);

    private void Count(PackedVoicing voicing)
    {
        CollectionsMarshal.GetValueRefOrAddDefault(_places, PlaceOf(voicing), out _)++;
        CollectionsMarshal.GetValueRefOrAddDefault(_chords, voicing.Classes, out _)++;
    }

    private (int Lowest, int Bottom, int Top) PlaceOf(PackedVoicing voicing)
    {
        (int bottom, int top) = rows.Extremes(voicing);
        return (rows.Read(voicing).Lowest, bottom, top);
    }

    private IEnumerable<FoldedHand> VariantsOf(FoldedHand hand)
    {
        PackedVoicing own = hand.Whole.Voicing;
        return IsFamiliar(own) ? [] : Enumerable.Range(0, rows.StringCount)
            .Where(index => own.StopAt(index) != 0)
            .SelectMany(index => _byAllButOne[(index, own.StopsWithout(index), rows.Extremes(own).Highest)]
                .Where(other => IsVariant(own, other.Whole.Voicing, index)));
    }

    private bool IsVariant(PackedVoicing own, PackedVoicing other, int index) =>
        (own.StopAt(index) == StringStop.Ringing.Code) != (other.StopAt(index) == StringStop.Ringing.Code)
        && own.BassClass == other.BassClass
        && (isNamed || own.Classes == other.Classes)
        && !IsFamiliar(other);

    private bool IsFamiliar(PackedVoicing voicing) => FamiliarGrips.Holds(voicing, rows.StringCount, homeFret);

    private void Keep(FoldedHand hand)
    {
        int top = rows.Extremes(hand.Whole.Voicing).Highest;
        for (int index = 0; index < rows.StringCount; index++)
        {
            if (hand.Whole.Voicing.StopAt(index) != 0)
            {
                ref List<FoldedHand>? hands = ref CollectionsMarshal.GetValueRefOrAddDefault(_byAllButOne, (index, hand.Whole.Voicing.StopsWithout(index), top), out _);
                (hands ??= []).Add(hand);
            }
        }
    }
}
