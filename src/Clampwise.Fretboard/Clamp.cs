using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>One capo at one fret holding a set of strings: full if it holds all of them, else partial.</summary>
public sealed record Clamp
{
    private Clamp(Fret fret, StringSet strings, bool isFull) => (Fret, Strings, IsFull) = (fret, strings, isFull);

    /// <summary>The fret behind which it sits, 1 to 24.</summary>
    public Fret Fret { get; }

    /// <summary>The strings that it holds, one at least.</summary>
    public StringSet Strings { get; }

    /// <summary>True if it holds every string of the instrument.</summary>
    public bool IsFull { get; }

    /// <summary>A clamp over strings of an instrument with so many; refused at the nut, without strings, and over strings that there are not.</summary>
    public static Result<Clamp> Create(StringSet strings, Fret fret, int stringCount)
    {
        StringSet missing = strings.Except(StringSet.All(stringCount));
        return strings.Count == 0 ? FretboardWords.ClampHoldsNothing(fret)
            : missing.Count > 0 ? FretboardWords.NoSuchString(missing.Strings.First().Number, stringCount)
            : fret == Fret.Nut ? FretboardWords.ClampAtNut(strings)
            : new Clamp(fret, strings, strings == StringSet.All(stringCount));
    }

    /// <summary>A clamp over all strings of an instrument with so many, at fret 1 or above. Throws at the nut.</summary>
    public static Clamp Full(Fret fret, int stringCount) => Create(StringSet.All(stringCount), fret, stringCount).Value;

    /// <summary>The same clamp at another fret, 1 or above. Throws at the nut.</summary>
    public Clamp At(Fret fret) => fret > Fret.Nut ? new(fret, Strings, IsFull) : throw new ArgumentOutOfRangeException(nameof(fret), "A clamp goes at fret 1 or above.");

    /// <summary>The same clamp turned round, over the strings counted from the other side, on an instrument with so many.</summary>
    public Clamp Mirrored(int stringCount) => new(Fret, Strings.Mirrored(stringCount), IsFull);

    /// <summary>Setup text of the clamp, such as <c>2-4@2</c> or <c>full@1</c>.</summary>
    public override string ToString() => $"{(IsFull ? "full" : Strings)}@{Fret}";
}
