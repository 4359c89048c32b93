using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>
/// Which drills are open to a player: those that they have met, and the next one as soon as little is left to meet. A new player
/// starts with one setup, not with all of them at once (our judgement).
/// </summary>
public static class DrillPath
{
    /// <summary>With so few shapes left to meet, the next drill opens.</summary>
    public const int FewUnmet = 1;

    /// <summary>The open drills, in their order.</summary>
    /// <param name="drills">All drills, in the order for new learners.</param>
    /// <param name="memory">What is known of the player.</param>
    /// <param name="own">The clamps at hand: a drill that takes another stays shut.</param>
    public static ImmutableArray<Drill> Open(IEnumerable<Drill> drills, MemoryState memory, OwnClamps own = default)
    {
        HashSet<ShapeKey> met = [.. memory.Items.Keys.Select(key => key.Shape)];
        Drill[] all = [.. drills.Where(drill => own.Fit(drill.Setup))];
        HashSet<DrillId> open = [.. all.Where(drill => drill.Voicings.Any(voicing => met.Contains(voicing.Key))).Select(drill => drill.Id)];
        int unmet = all.Where(drill => open.Contains(drill.Id)).SelectMany(drill => drill.Voicings).Count(voicing => !met.Contains(voicing.Key));
        if (unmet <= FewUnmet && all.FirstOrDefault(drill => !open.Contains(drill.Id)) is { } next)
        {
            open.Add(next.Id);
        }

        return [.. all.Where(drill => open.Contains(drill.Id))];
    }
}
