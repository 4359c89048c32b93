namespace Clampwise.Fretboard;

/// <summary>A hand while a list of hands is made.</summary>
/// <param name="Whole">The hand with all its strings.</param>
/// <param name="Thinnings">The same hand with strings muted.</param>
internal sealed record FoldedHand(Candidate Whole, List<Candidate> Thinnings)
{
    /// <summary>Hands that differ from it in an open string alone and share its line.</summary>
    public List<FoldedHand> Variants { get; } = [];
}
