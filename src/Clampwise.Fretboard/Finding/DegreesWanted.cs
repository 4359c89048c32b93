using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>The tones that a voicing must have, all of them and no others, counted from a root.</summary>
/// <param name="Degrees">The degrees.</param>
/// <param name="Root">The root at concert pitch; any root if null.</param>
public sealed record DegreesWanted(DegreeSet Degrees, PitchClass? Root = null)
{
    /// <summary>Reads degrees such as <c>R 3 5 b7 9</c>, with spaces or commas between them; 1 is read as R.</summary>
    public static Result<DegreesWanted> Parse(string text, PitchClass? root = null)
    {
        DegreeSet degrees = default;
        foreach ((string word, int start) in SpacedWords.Split(text.Replace(',', ' ')))
        {
            if (!ParseDegree(word).TryGet(out ChordDegree degree, out Fault? fault))
            {
                return fault.ShiftedBy(start);
            }

            degrees = degrees.With(degree);
        }

        return degrees.IsEmpty ? FretboardWords.ExpectedDegree(text) : new DegreesWanted(degrees, root);
    }

    /// <summary>For each set of pitch classes, as bits with C lowest, whether it is just these degrees.</summary>
    internal bool[] FittingClasses()
    {
        var fits = new bool[1 << PitchClass.Count];
        for (int root = 0; root < PitchClass.Count; root++)
        {
            if (Root is null || Root.Value.Number == root)
            {
                fits[Degrees.Aggregate(0, (bits, degree) => bits | (1 << ((root + degree.Semitones) % PitchClass.Count)))] = true;
            }
        }

        return fits;
    }

    private static Result<ChordDegree> ParseDegree(string word)
    {
        if (word is "R" or "r")
        {
            return ChordDegree.Root;
        }

        int signs = word.TakeWhile(sign => sign is '#' or 'b' or '♯' or '♭').Count();
        int alteration = word.Take(signs).Sum(sign => sign is '#' or '♯' ? 1 : -1);
        bool isNumber = int.TryParse(word.AsSpan(signs), System.Globalization.NumberStyles.None, null, out int number);
        bool isInRange = number is >= 1 and <= ChordDegree.HighestNumber
            && alteration is >= ChordDegree.LowestAlteration and <= ChordDegree.HighestAlteration;
        return isNumber && isInRange
            ? ChordDegree.Of(number, alteration)
            : FretboardWords.ExpectedDegree(word);
    }
}
