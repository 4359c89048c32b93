using System.Collections.Immutable;
using Clampwise.Fretboard;

namespace Clampwise.Practice;

/// <summary>A named set of voicings in a setup.</summary>
/// <param name="Id">Its short name.</param>
/// <param name="Title">Its name on a screen.</param>
/// <param name="Setup">The setup in which all its voicings are played.</param>
/// <param name="Voicings">The voicings, easiest first as the author sees them.</param>
/// <param name="Note">A few words about the drill; null for none.</param>
public sealed record Drill(DrillId Id, string Title, Setup Setup, ImmutableArray<DrillVoicing> Voicings, string? Note = null)
{
    /// <summary>The directions in which it is asked; all of them unless set otherwise.</summary>
    public ImmutableArray<Direction> Directions { get; init; } = Practice.Directions.All;
}
