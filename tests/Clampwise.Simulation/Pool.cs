using System.Collections.Immutable;
using Clampwise.Practice;
using Clampwise.Storage;

namespace Clampwise.Simulation;

/// <summary>What can be asked of a learner: a fixed set of drills, or the shipped course that opens drill by drill.</summary>
public sealed class Pool
{
    private readonly ImmutableArray<Drill> _drills;
    private readonly bool _opens;
    private readonly Dictionary<ShapeKey, int> _directions;
    private (string Open, Repertoire Repertoire)? _open;

    private Pool(IEnumerable<Drill> drills, bool opens)
    {
        (_drills, _opens) = ([.. drills], opens);
        Everything = Repertoire.Of(_drills);
        Items = [.. Everything.Items.Where(item => !item.Key.Direction.IsInTime())];
        _directions = Items.GroupBy(item => item.Key.Shape).ToDictionary(shape => shape.Key, shape => shape.Count());
    }

    /// <summary>The first shipped drills in their order, until they hold so many shapes; all of them open from the first day.</summary>
    public static Pool Fixed(int shapes)
    {
        int held = 0;
        return new Pool(DrillLibrary.Shipped.Drills.TakeWhile(drill => (held += drill.Voicings.Length) - drill.Voicings.Length < shapes).ToArray(), opens: false);
    }

    /// <summary>All shipped drills, opening as the program opens them.</summary>
    public static Pool Course { get; } = new(DrillLibrary.Shipped.Drills, opens: true);

    /// <summary>All that there is.</summary>
    public Repertoire Everything { get; }

    /// <summary>All items that are asked, changes in time left out.</summary>
    public ImmutableArray<PracticeItem> Items { get; }

    /// <summary>In how many directions a shape is asked.</summary>
    public int DirectionsOf(ShapeKey shape) => _directions[shape];

    /// <summary>What is open to a learner.</summary>
    public Repertoire OpenTo(MemoryState memory)
    {
        if (!_opens)
        {
            return Everything;
        }

        ImmutableArray<Drill> drills = DrillPath.Open(_drills, memory);
        string names = string.Join(' ', drills.Select(drill => drill.Id));
        if (_open is not { } open || open.Open != names)
        {
            _open = open = (names, Repertoire.Of(drills));
        }

        return open.Repertoire;
    }
}
