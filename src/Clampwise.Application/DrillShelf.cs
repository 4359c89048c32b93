using System.Collections.Immutable;
using Clampwise.Fretboard;
using Clampwise.Practice;
using Clampwise.Storage;
using Clampwise.Theory;

namespace Clampwise.Application;

/// <summary>The drills at hand, and the drills of the player's own among them.</summary>
public sealed class DrillShelf
{
    private (ImmutableArray<Drill> Drills, MemoryState Memory, OwnClamps Clamps, Repertoire Repertoire)? _open;
    private Repertoire? _everything;

    /// <summary>A shelf of drills.</summary>
    /// <param name="drills">The drills, in the order in which they open.</param>
    /// <param name="folder">Where drills of the player's own are kept; null if nowhere.</param>
    public DrillShelf(IEnumerable<Drill> drills, DataFolder? folder = null) => (Drills, Folder) = ([.. drills], folder);

    /// <summary>All drills at hand.</summary>
    public ImmutableArray<Drill> Drills { get; private set; }

    /// <summary>Where drills of the player's own are kept; null if nowhere.</summary>
    public DataFolder? Folder { get; }

    /// <summary>What all of them ask. Made when it is first wanted: the first screen has no need of it.</summary>
    public Repertoire Everything => _everything ??= Repertoire.Of(Drills);

    /// <summary>What can be asked: the drills that are open to a player.</summary>
    /// <param name="memory">What is known of the player.</param>
    /// <param name="clamps">The clamps that the player owns.</param>
    public Repertoire OpenTo(MemoryState memory, OwnClamps clamps)
    {
        if (_open is not { } open || open.Drills != Drills || !ReferenceEquals(open.Memory, memory) || open.Clamps != clamps)
        {
            open = (Drills, memory, clamps, Repertoire.Of(DrillPath.Open(Drills, memory, clamps)));
            _open = open;
        }

        return open.Repertoire;
    }

    /// <summary>Keeps a voicing in the player's own drill of its setup, and says what came of it.</summary>
    public string Keep(Voicing voicing)
    {
        if (Folder is null)
        {
            return "Nothing can be kept: there is no data folder.";
        }

        Drill drill = OwnDrill.With(Drills, voicing);
        if (DrillLibrary.Save(Folder, new DrillSheet(drill, OwnDrill.Order, DrillOrigin.Own), mayReplace: true) is { } fault)
        {
            return fault.ToString();
        }

        Drills = [.. Drills.Where(known => known.Id != drill.Id), drill];
        _everything = null;
        return $"Kept in the drill '{drill.Id}': {Counted.Of(drill.Voicings.Length, "voicing")}.";
    }
}
