using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>The hands for one degree of a key in a setup.</summary>
/// <param name="Degree">The degree.</param>
/// <param name="Shape">Its triad counted from the home clamp.</param>
/// <param name="Sounding">Its triad at concert pitch.</param>
/// <param name="Hands">The best hands, best first; empty if the setup has none.</param>
/// <param name="NearMiss">A colour of it that comes easier, where the chord itself is hard here; else null.</param>
public sealed record DegreeHands(KeyDegree Degree, ChordSymbol Shape, ChordSymbol Sounding, ImmutableArray<FoundHand> Hands, FoundHand? NearMiss)
{
    /// <summary>The near miss in words: <c>C takes four fingers; x54030 is Cadd9 and rings</c>; empty without one.</summary>
    public string NearMissWords
    {
        get
        {
            if (NearMiss is not { Whole: var near })
            {
                return "";
            }

            string hard = Hands is not [{ Whole.Fingering: var best }, ..] ? $"no hand for {Shape} here"
                : $"{Shape} takes {(best.Barres.Any() ? "a barre" : Spoken.Count(best.Placements.Length, "finger"))}";
            string rings = near.Voicing.Fretting.Stops.Any(stop => stop.IsRinging) ? " and rings" : "";
            return $"{hard}; {near.Voicing.Fretting} is {near.Voicing.ShapeName}{rings}";
        }
    }
}
