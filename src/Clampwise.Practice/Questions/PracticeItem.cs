namespace Clampwise.Practice;

/// <summary>An item as it can be asked: its key, and the drill and voicing that it is asked from.</summary>
/// <param name="Key">Shape and direction.</param>
/// <param name="Drill">The drill.</param>
/// <param name="Subject">The voicing.</param>
/// <param name="Family">The chord family of the voicing.</param>
public sealed record PracticeItem(ItemKey Key, Drill Drill, DrillVoicing Subject, ChordFamily Family)
{
    /// <inheritdoc/>
    public bool Equals(PracticeItem? other) => other is not null && Key == other.Key && Drill.Id == other.Drill.Id;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Key, Drill.Id);

    /// <inheritdoc/>
    public override string ToString() => Key.ToString();
}
