namespace Clampwise.Fretboard;

/// <summary>One capo at one fret holding a set of strings: full if it holds all of them, else partial.</summary>
/// <param name="Fret">The fret behind which it sits, 1 to 24.</param>
/// <param name="Strings">The strings that it holds.</param>
/// <param name="IsFull">True if it holds every string of the instrument.</param>
public sealed record Clamp(Fret Fret, StringSet Strings, bool IsFull)
{
    /// <summary>A clamp over the given strings of an instrument with so many.</summary>
    public static Clamp Over(StringSet strings, Fret fret, int stringCount) => new(fret, strings, strings == StringSet.All(stringCount));

    /// <summary>Setup text of the clamp, such as <c>2-4@2</c> or <c>full@1</c>.</summary>
    public override string ToString() => $"{(IsFull ? "full" : Strings)}@{Fret}";
}
