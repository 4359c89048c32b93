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
    public string Summary => Said(Worth);

    /// <summary>
    /// The summary in at most so many columns: what weighs least is left out, and dots say so. The fingers always stay.
    /// </summary>
    public string SummaryWithin(int columns)
    {
        ImmutableArray<Price> worth = Worth;
        string summary = Said(worth);
        while (summary.Length > columns && worth.Length > 1)
        {
            worth = worth.Remove(worth.Skip(1).MinBy(reason => Math.Abs(reason.Points))!);
            summary = $"{Said(worth)}, ...";
        }

        return summary;
    }

    private ImmutableArray<Price> Worth => [.. Reasons.Where((reason, i) => i == 0 || Math.Abs(reason.Points) >= WorthSaying)];

    private static string Said(IEnumerable<Price> reasons) => string.Join(", ", reasons.Select(reason => reason.Words));
}
