using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>
/// Which drills are open to a player: those that they have begun, and the next one once every shape of these is known by both its names. To
/// meet shapes is not to know them: a new player keeps to one setup until it is theirs, or begins another drill of their own accord.
/// </summary>
public static class DrillPath
{
    private static readonly Direction[] s_bothNames = [Direction.SeeShapeSayShapeName, Direction.SeeShapeSaySoundingName];

    /// <summary>The open drills, in their order.</summary>
    /// <param name="drills">All drills, in the order for new learners.</param>
    /// <param name="memory">What is known of the player.</param>
    /// <param name="own">The clamps at hand: a drill that takes another stays shut.</param>
    public static ImmutableArray<Drill> Open(IEnumerable<Drill> drills, MemoryState memory, OwnClamps own = default)
    {
        Drill[] all = [.. drills.Where(drill => own.Fit(drill.Setup))];
        HashSet<DrillId> open = Begun(all, memory);
        if (Array.Find(all, drill => !open.Contains(drill.Id)) is { } next && all.Where(drill => open.Contains(drill.Id)).All(drill => Unknown(drill, memory).IsEmpty))
        {
            open.Add(next.Id);
        }

        return [.. all.Where(drill => open.Contains(drill.Id))];
    }

    /// <summary>The drill that opens next; null if all that can be clamped are open.</summary>
    public static Drill? Next(IEnumerable<Drill> drills, MemoryState memory, OwnClamps own = default)
    {
        ImmutableArray<Drill> all = [.. drills];
        return all.Where(drill => own.Fit(drill.Setup)).Except(Open(all, memory, own)).FirstOrDefault();
    }

    /// <summary>The shapes of a drill that are not known by both names yet; a drill that does not ask for a name lacks nothing there.</summary>
    public static ImmutableArray<DrillVoicing> Unknown(Drill drill, MemoryState memory)
    {
        Direction[] asked = [.. s_bothNames.Intersect(drill.Directions)];
        return [.. drill.Voicings.Where(voicing => voicing.Voicing.Shape.First.Quality is not null && asked.Any(direction => !Known.In(memory, voicing.Key, direction)))];
    }

    private static HashSet<DrillId> Begun(IEnumerable<Drill> all, MemoryState memory)
    {
        HashSet<ShapeKey> met = [.. memory.Items.Keys.Select(key => key.Shape)];
        HashSet<ShapeKey> claimed = [];
        HashSet<DrillId> begun = [];
        foreach (Drill drill in all)
        {
            // A shape that stands in several drills is asked from the first: met there, it begins no later one.
            ShapeKey[] own = [.. drill.Voicings.Select(voicing => voicing.Key).Where(claimed.Add)];
            if (own.Any(met.Contains))
            {
                begun.Add(drill.Id);
            }
        }

        return begun;
    }
}
