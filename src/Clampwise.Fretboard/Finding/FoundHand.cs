using System.Collections.Immutable;

namespace Clampwise.Fretboard;

/// <summary>A hand that fits a query: the voicing with the most strings that its fingers sound, and what shares its line.</summary>
/// <param name="Whole">The hand with all its strings.</param>
/// <param name="Variants">Hands that differ from it in an open string alone, best first.</param>
/// <param name="Thinnings">The same hand with strings muted, those of its variants after them.</param>
public sealed record FoundHand(FoundVoicing Whole, ImmutableArray<Voicing> Variants, ImmutableArray<Voicing> Thinnings)
{
    /// <summary>For each thinning of the same name the strings that it mutes beyond the whole hand.</summary>
    public IEnumerable<StringSet> WithoutStrings
    {
        get
        {
            return Thinnings
                .Where(thinning => IsWithin(thinning) && thinning.Sounding.First == Whole.Voicing.Sounding.First)
                .Select(thinning => Sounding(Whole.Voicing).Except(Sounding(thinning)));
        }
    }

    /// <summary>Single strings that may be left out, in words: <c>also without string 6, 1</c>; empty if none may.</summary>
    public string AlsoWithout
    {
        get
        {
            string[] single = [.. WithoutStrings.Where(strings => strings.Count == 1).Select(strings => $"{strings}").OrderDescending(StringComparer.Ordinal)];
            return single.Length > 0 ? $"also without string {string.Join(", ", single)}"
                : WithoutStrings.Any() ? $"also without {Spoken.Strings(WithoutStrings.First())}"
                : "";
        }
    }

    /// <summary>The other hands of the line, in words: <c>or 540400, 540050</c>; empty if there is none.</summary>
    public string OrElse => Variants.IsEmpty ? "" : $"or {string.Join(", ", Variants.Select(variant => $"{variant.Fretting}"))}";

    /// <summary>All that is said of it: what weighs, the other hands of its line, the strings that may be left out.</summary>
    public string Telling => Whole.Summary + After(OrElse) + After(AlsoWithout);

    /// <summary>A voicing by itself.</summary>
    public static FoundHand Alone(FoundVoicing voicing) => new(voicing, [], []);

    /// <summary>
    /// What speaks for it and what shares its line, in at most so many columns: first what weighs least is left out, then the strings
    /// that may be left out, then the variants. The fingers always stay.
    /// </summary>
    public string SummaryWithin(int columns)
    {
        string fewest = Whole.SummaryWithin(0);
        string[] tails = [.. new[] { $"{After(OrElse)}{After(AlsoWithout)}", After(OrElse), "" }];
        string tail = tails.First(words => words.Length == 0 || fewest.Length + words.Length <= columns);
        return Whole.SummaryWithin(columns - tail.Length) + tail;
    }

    private static string After(string words) => words.Length == 0 ? "" : $"; {words}";

    private bool IsWithin(Voicing thinning) =>
        thinning.Fretting.Stops.Zip(Whole.Voicing.Fretting.Stops).All(pair => pair.First == pair.Second || pair.First.IsMuted);

    private static StringSet Sounding(Voicing voicing) =>
        StringSet.Of(voicing.Strings.Where(sounding => sounding.Pitch is not null).Select(sounding => sounding.Number));
}
