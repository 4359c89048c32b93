using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>The map of shapes: what is known of each shape, by name, by sounding name, to place and by ear.</summary>
public static class ShapeMap
{
    /// <summary>Every shape of the drills of which one was met, in the order of the drills.</summary>
    public static ImmutableArray<MappedShape> Of(Repertoire repertoire, MemoryState memory)
    {
        HashSet<ShapeKey> met = [.. memory.Items.Keys.Select(item => item.Shape)];
        HashSet<DrillId> begun = [.. repertoire.Drills.Where(drill => drill.Voicings.Any(voicing => met.Contains(voicing.Key))).Select(drill => drill.Id)];
        return [.. repertoire.Items.DistinctBy(item => item.Key.Shape).Where(item => begun.Contains(item.Drill.Id)).Select(item => new MappedShape(
            item,
            Stands(memory, item, Direction.SeeShapeSayShapeName),
            Stands(memory, item, Direction.SeeShapeSaySoundingName),
            Stands(memory, item, Direction.NamePlaceShape),
            Stands(memory, item, Direction.HearSayName)))];
    }

    private static Standing Stands(MemoryState memory, PracticeItem item, Direction direction) =>
        !memory.Items.TryGetValue(item.Key with { Direction = direction }, out ItemMemory? asked) ? Standing.Unmet
        : Known.Is(asked) ? Standing.Known
        : Standing.Met;
}
