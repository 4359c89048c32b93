using System.Collections.Immutable;
using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>A named set of voicings in a setup.</summary>
/// <param name="Id">Its short name.</param>
/// <param name="Title">Its name on a screen.</param>
/// <param name="Setup">The setup in which all its voicings are played.</param>
/// <param name="Voicings">The voicings, easiest first as the author sees them.</param>
/// <param name="Note">A few words about the drill; null for none.</param>
public sealed record Drill(DrillId Id, string Title, Setup Setup, ImmutableArray<DrillVoicing> Voicings, string? Note = null)
{
    /// <summary>
    /// A drill, refused without voicings, with a voicing of another setup, or with the same voicing twice: then the message says
    /// which one, counted from 1.
    /// </summary>
    public static Result<Drill> Create(DrillId id, string title, Setup setup, IEnumerable<DrillVoicing> voicings, string? note = null)
    {
        ImmutableArray<DrillVoicing> all = [.. voicings];
        if (all.IsEmpty)
        {
            return PracticeWords.DrillWithoutVoicings(id);
        }

        var seen = new Dictionary<Fretting, int>();
        for (int i = 0; i < all.Length; i++)
        {
            Voicing voicing = all[i].Voicing;
            if (!voicing.Setup.Equals(setup))
            {
                return PracticeWords.VoicingOfOtherSetup(i + 1, voicing, setup);
            }

            if (!seen.TryAdd(voicing.Fretting, i + 1))
            {
                return PracticeWords.SameVoicingTwice(seen[voicing.Fretting], i + 1, voicing);
            }
        }

        return new Drill(id, title, setup, all, note);
    }

    /// <summary>The directions in which it is asked; all of them unless set otherwise.</summary>
    public ImmutableArray<Direction> Directions { get; init; } = Practice.Directions.All;
}
