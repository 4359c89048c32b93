using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>What cannot be clamped: the refusals of a setup.</summary>
internal static class ClampRules
{
    /// <summary>The first refusal and the place among the clamps of the one that it is about; null if all may stand.</summary>
    public static (Fault Fault, int Place)? FirstFault(Tuning tuning, ImmutableArray<Clamp> clamps)
    {
        for (int place = 0; place < clamps.Length; place++)
        {
            Fault? fault = OwnFault(tuning, clamps[place])
                ?? clamps.Take(place).Select(before => Conflict(before, clamps[place])).FirstOrDefault(conflict => conflict is not null);
            if (fault is not null)
            {
                return (fault, place);
            }
        }

        return null;
    }

    // A clamp made for an instrument with more strings.
    private static Fault? OwnFault(Tuning tuning, Clamp clamp)
    {
        StringSet missing = clamp.Strings.Except(StringSet.All(tuning.StringCount));
        return missing.Count > 0 ? FretboardWords.NoSuchString(missing.Strings.First().Number, tuning.StringCount) : null;
    }

    private static Fault? Conflict(Clamp one, Clamp other)
    {
        if (one.Fret == other.Fret)
        {
            StringSet shared = one.Strings.Intersect(other.Strings);
            return shared.Count > 0 ? FretboardWords.ClampsOverlap(one, other, shared) : null;
        }

        (Clamp lower, Clamp higher) = one.Fret < other.Fret ? (one, other) : (other, one);
        return higher.IsFull && !lower.IsFull ? FretboardWords.PartialBehindFull(lower, higher) : null;
    }
}
