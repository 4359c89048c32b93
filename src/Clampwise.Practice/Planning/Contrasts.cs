namespace Clampwise.Practice;

/// <summary>Which shape the player should meet beside which: for each shape the one that it was most often taken for, or that was taken for it.</summary>
internal sealed class Contrasts
{
    /// <summary>So many pairs come in a session at most.</summary>
    public const int MostPairs = 3;

    // Once may be a slip; what happened twice of late is a confusion (our judgement).
    private const double LeastWeight = 1.5;
    private readonly Dictionary<ShapeKey, ShapeKey> _others = [];

    public Contrasts(MemoryState memory, PracticeDay today)
    {
        IEnumerable<(Confusion Confusion, double Weight)> weighty = memory.Confusions
            .Select(pair => (pair.Key, pair.Value.WeightOn(today)))
            .Where(pair => pair.Item2 >= LeastWeight)
            .OrderByDescending(pair => pair.Item2).ThenBy(pair => pair.Key.ToString(), StringComparer.Ordinal);
        foreach ((Confusion confusion, _) in weighty)
        {
            _others.TryAdd(confusion.Asked, confusion.Taken);
            _others.TryAdd(confusion.Taken, confusion.Asked);
        }
    }

    /// <summary>The item to ask beside another, in the same direction; null if its shape is confused with none.</summary>
    public ItemKey? Of(ItemKey key) => _others.TryGetValue(key.Shape, out ShapeKey? other) ? key with { Shape = other } : null;
}
