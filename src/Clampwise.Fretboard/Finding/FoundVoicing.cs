using System.Collections.Immutable;

namespace Clampwise.Fretboard;

/// <summary>A voicing that fits a query, with what speaks for and against it.</summary>
/// <param name="Voicing">The voicing.</param>
/// <param name="Fingering">The cheapest fingers for it.</param>
/// <param name="Reasons">What ranks it, with the weights that add up to the score.</param>
public sealed record FoundVoicing(Voicing Voicing, Fingering Fingering, ImmutableArray<Price> Reasons)
{
    private const double WorthSaying = 0.5;

    /// <summary>Fewer points come first.</summary>
    public double Score => Reasons.Sum(reason => reason.Points);

    /// <summary>
    /// The fingers, and what weighs half a point or more, in one line: <c>one finger, four strings ring, root in the bass</c>.
    /// </summary>
    public string Summary => string.Join(
        ", ", Reasons.Where((reason, i) => i == 0 || Math.Abs(reason.Points) >= WorthSaying).Select(reason => reason.Words));
}
