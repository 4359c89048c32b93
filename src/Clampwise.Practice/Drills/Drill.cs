using System.Collections.Immutable;
using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>A named set of voicings in a setup.</summary>
public sealed record Drill
{
    private Drill(DrillId id, string title, Setup setup, ImmutableArray<DrillVoicing> voicings, string? note) =>
        (Id, Title, Setup, Voicings, Note) = (id, title, setup, voicings, note);

    /// <summary>Its short name.</summary>
    public DrillId Id { get; }

    /// <summary>Its name on a screen.</summary>
    public string Title { get; init; }

    /// <summary>The setup in which all its voicings are played.</summary>
    public Setup Setup { get; }

    /// <summary>The voicings, easiest first as the author sees them: one at least, none twice, all in the setup.</summary>
    public ImmutableArray<DrillVoicing> Voicings { get; }

    /// <summary>A few words about the drill; null for none.</summary>
    public string? Note { get; init; }

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

    /// <summary>The drill with one more voicing at its end; the drill itself if it holds that already.</summary>
    public Result<Drill> With(DrillVoicing voicing) => Voicings.Any(kept => kept.Voicing.Equals(voicing.Voicing)) ? this
        : Create(Id, Title, Setup, Voicings.Add(voicing), Note).Select(more => more with { Directions = Directions });

    /// <summary>The directions in which it is asked; all of them unless set otherwise.</summary>
    public ImmutableArray<Direction> Directions { get; init; } = Practice.Directions.All;
}
