using Clampwise.Fretboard;

namespace Clampwise.Practice;

/// <summary>A voicing of a drill.</summary>
/// <param name="Voicing">The voicing; its names and pitches are computed.</param>
/// <param name="Note">A remark for the player, shown after the answer; null for none.</param>
public sealed record DrillVoicing(Voicing Voicing, string? Note = null)
{
    private readonly Lazy<ShapeKey> _key = new(() => ShapeKey.Of(Voicing));

    /// <summary>What is remembered of it.</summary>
    public ShapeKey Key => _key.Value;

    /// <inheritdoc/>
    public bool Equals(DrillVoicing? other) => other is not null && Voicing.Equals(other.Voicing) && Note == other.Note;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Voicing, Note);
}
