using System.Collections.Immutable;
using Clampwise.Fretboard;

namespace Clampwise.Practice;

/// <summary>Everything that can be asked from a set of drills, each item once.</summary>
public sealed class Repertoire
{
    private readonly ImmutableDictionary<ItemKey, PracticeItem> _byKey;
    private readonly ILookup<string, PracticeItem> _shapesByRig;
    private readonly Dictionary<Setup, ImmutableArray<DrillVoicing>> _shapesBySetup;

    private Repertoire(ImmutableArray<Drill> drills, ImmutableArray<PracticeItem> items)
    {
        Drills = drills;
        Items = items;
        _byKey = items.ToImmutableDictionary(item => item.Key);
        _shapesByRig = items.DistinctBy(item => item.Key.Shape).ToLookup(item => item.Key.Shape.Rig, StringComparer.Ordinal);
        _shapesBySetup = drills.Select(drill => drill.Setup).Distinct().ToDictionary(setup => setup, PlayedIn);
    }

    /// <summary>The drills.</summary>
    public ImmutableArray<Drill> Drills { get; }

    /// <summary>The items: drill by drill, voicing by voicing, direction by direction.</summary>
    public ImmutableArray<PracticeItem> Items { get; }

    /// <summary>
    /// The items of drills. A shape that stands in several drills is asked from the first; a question about names alone is asked
    /// once for each shape name in a rig.
    /// </summary>
    public static Repertoire Of(IEnumerable<Drill> drills)
    {
        ImmutableArray<Drill> all = [.. drills];
        var seen = new HashSet<ItemKey>();
        var named = new HashSet<(string Rig, string Name, Direction Direction)>();
        ImmutableArray<PracticeItem> items = [.. all.SelectMany(ItemsOf).Where(item => seen.Add(item.Key) && IsNewName(item))];
        return new Repertoire(all, items);

        bool IsNewName(PracticeItem item) => !item.Key.Direction.IsNamesOnly()
            || named.Add((item.Key.Shape.Rig, item.Subject.Voicing.ShapeName, item.Key.Direction));
    }

    /// <summary>The item of a key; null if no drill has it.</summary>
    public PracticeItem? Find(ItemKey key) => _byKey.GetValueOrDefault(key);

    /// <summary>Every shape of a rig once, as the item of its first direction.</summary>
    public IEnumerable<PracticeItem> ShapesIn(string rig) => _shapesByRig[rig];

    /// <summary>The other shapes of an item's rig as they are played in its very setup, so that they can be drawn and heard beside it.</summary>
    public IEnumerable<DrillVoicing> Others(PracticeItem item) => (_shapesBySetup.TryGetValue(item.Drill.Setup, out ImmutableArray<DrillVoicing> shapes) ? shapes : [])
        .Where(other => other.Key != item.Key.Shape);

    /// <summary>The shapes of other setups.</summary>
    public IEnumerable<DrillVoicing> Elsewhere(PracticeItem item) =>
        Drills.Where(drill => !drill.Setup.Equals(item.Drill.Setup)).SelectMany(drill => drill.Voicings);

    // A shape that a drill holds under another full capo is the same shape, moved.
    private ImmutableArray<DrillVoicing> PlayedIn(Setup setup) => [.. _shapesByRig[ShapeKey.RigText(setup)]
        .Select(item => item.Drill.Setup.Equals(setup) ? item.Subject
            : Voicing.Parse(setup, item.Key.Shape.Shape, allowBehindClamp: true).TryGet(out Voicing? moved, out _) ? new DrillVoicing(moved, item.Subject.Note)
            : null)
        .OfType<DrillVoicing>()];

    private static IEnumerable<PracticeItem> ItemsOf(Drill drill)
    {
        foreach (DrillVoicing voicing in drill.Voicings)
        {
            ChordFamily family = ChordFamilies.Of(voicing.Voicing);
            foreach (Direction direction in drill.Directions)
            {
                var item = new PracticeItem(new ItemKey(voicing.Key, direction), drill, voicing, family);
                if (QuestionMaker.CanAsk(item))
                {
                    yield return item;
                }
            }
        }
    }
}
