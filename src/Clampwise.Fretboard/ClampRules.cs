using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>What cannot be clamped: the refusals of a setup.</summary>
internal static class ClampRules
{
    public static Fault? FirstFault(Tuning tuning, ImmutableArray<Clamp> clamps)
    {
        StringSet all = StringSet.All(tuning.StringCount);
        foreach (Clamp clamp in clamps)
        {
            if (clamp.Strings.Count == 0)
            {
                return FretboardWords.ClampHoldsNothing(clamp);
            }

            if (clamp.Strings.Except(all) is { Count: > 0 } missing)
            {
                return FretboardWords.NoSuchString(missing.Strings.First().Number, tuning.StringCount);
            }

            if (clamp.Fret == Fret.Nut)
            {
                return FretboardWords.ClampAtNut(clamp);
            }
        }

        return clamps.SelectMany((clamp, i) => clamps.Skip(i + 1).Select(other => Conflict(clamp, other))).FirstOrDefault(fault => fault is not null);
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
