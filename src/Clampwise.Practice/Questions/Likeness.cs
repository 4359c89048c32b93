using Clampwise.Fretboard;

namespace Clampwise.Practice;

/// <summary>How easily one voicing is taken for another: what the player has confused before, then what sounds and looks alike.</summary>
public static class Likeness
{
    private const double ConfusionWorth = 2;
    private const double FamilyWorth = 0.3;
    private const double BassWorth = 0.3;

    /// <summary>0 for nothing in common; every string that sounds the same, the family and the bass add to it (our judgement).</summary>
    public static double OfSound(Voicing one, Voicing other)
    {
        int strings = one.Strings.Length;
        double same = strings == other.Strings.Length ? 1 - ((double)one.SoundsOtherwise(other).Count / strings) : 0;
        double family = ChordFamilies.Of(one) == ChordFamilies.Of(other) ? FamilyWorth : 0;
        double bass = one.Pitches.Length > 0 && other.Pitches.Length > 0 && one.Pitches.Min() == other.Pitches.Min() ? BassWorth : 0;
        return same + family + bass;
    }

    /// <summary>Likeness with what the player took for each other, in either direction.</summary>
    public static double For(DrillVoicing one, DrillVoicing other, MemoryState memory, PracticeDay day) =>
        OfSound(one.Voicing, other.Voicing) + (ConfusionWorth * Confused(one.Key, other.Key, memory, day));

    /// <summary>How often, faded by time, two shapes were taken for each other.</summary>
    public static double Confused(ShapeKey one, ShapeKey other, MemoryState memory, PracticeDay day) =>
        Count(one, other, memory, day) + Count(other, one, memory, day);

    private static double Count(ShapeKey asked, ShapeKey taken, MemoryState memory, PracticeDay day) =>
        memory.Confusions.TryGetValue(new Confusion(asked, taken), out ConfusionCount count) ? count.WeightOn(day) : 0;
}
