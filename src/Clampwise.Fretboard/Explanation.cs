using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>All there is to say of one voicing, without a drawing: its names, its strings, its fingers and what makes it hard.</summary>
public sealed class Explanation
{
    // In points: what weighs less is no reason that a player would feel.
    private const double WorthSaying = 0.35;

    private readonly Result<Fingering> _fingering;

    private Explanation(Voicing voicing, Result<Fingering> fingering) => (Voicing, _fingering) = (voicing, fingering);

    /// <summary>The voicing.</summary>
    public Voicing Voicing { get; }

    /// <summary>The cheapest fingering; null if the hand cannot.</summary>
    public Fingering? Fingering => _fingering.IsGood ? _fingering.Value : null;

    /// <summary>Explains a voicing for a hand on a neck.</summary>
    public static Explanation Of(Voicing voicing, Hand? hand = null, Neck? neck = null) =>
        new(voicing, Fretboard.Fingering.Of(voicing, hand, neck));

    /// <summary>The explanation, one line a fact.</summary>
    public IEnumerable<string> Lines => [.. Names(), .. VoicingWords.Lines(Voicing, Fingering), .. Fingers()];

    private IEnumerable<string> Names()
    {
        yield return $"{Voicing.Fretting} in {Voicing.Setup}";
        string shape = $"{Voicing.ShapeName}, {Voicing.Fretting.ToHomeText(Voicing.Setup)}";
        yield return Voicing.Setup.Home is { } home ? $"sounds {Voicing.SoundingName}; counted from the clamp at {home.Fret} it is {shape}"
            : Voicing.Setup.ShapeShift != 0 ? $"sounds {Voicing.SoundingName}; as a shape it is {Voicing.ShapeName}"
            : $"sounds {Voicing.SoundingName}";
        string[] others = [.. Voicing.Sounding.Readings.Skip(1).Select(reading => reading.Symbol.ToString())];
        if (others.Length > 0)
        {
            yield return $"also {string.Join(", ", others)}";
        }

        if (Voicing.Sounding.Readings.FirstOrDefault() is { Omitted.IsEmpty: false } first)
        {
            yield return $"without {string.Join(" or ", first.Omitted.Select(VoicingWords.Say))}";
        }
    }

    private IEnumerable<string> Fingers()
    {
        if (!_fingering.TryGet(out Fingering? fingering, out Fault? fault))
        {
            yield return $"no hand for it: {fault.Message}";
            yield break;
        }

        yield return $"fingers: {fingering}";
        string why = string.Join(", ", fingering.Prices.Where((price, i) => i == 0 || price.Points >= WorthSaying).Select(price => price.Words));
        yield return $"reach {fingering.ReachMillimetres:0} mm, difficulty {fingering.Difficulty:0.0}: {why}";
    }
}
