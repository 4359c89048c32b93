using Clampwise.Fretboard;

namespace Clampwise.Practice;

/// <summary>Sorts chords into families by what stands behind the root in the house style of chord symbols.</summary>
public static class ChordFamilies
{
    /// <summary>The family of a voicing, by its first reading; the same wherever the rig is moved.</summary>
    public static ChordFamily Of(Voicing voicing) =>
        voicing.Shape.Readings.IsEmpty ? ChordFamily.Other : OfSuffix(voicing.Shape.Readings[0].Symbol.Suffix);

    /// <summary>The family of a chord symbol's suffix: the part after the root, without a bass.</summary>
    public static ChordFamily OfSuffix(string suffix)
    {
        bool Has(string part) => suffix.Contains(part, StringComparison.Ordinal);
        bool Starts(string part) => suffix.StartsWith(part, StringComparison.Ordinal);
        return suffix switch
        {
            "" => ChordFamily.Major,
            "m" => ChordFamily.Minor,
            "5" => ChordFamily.Power,
            _ when Has("sus") => ChordFamily.Suspended,
            _ when Has("maj") => ChordFamily.MajorSeventh,
            _ when Has("dim") || Has("m7b5") || Has("ø") || Has("°") => ChordFamily.Diminished,
            _ when Has("aug") || Starts("+") => ChordFamily.Augmented,
            _ when Has("add") || Starts("6") || Starts("m6") => ChordFamily.Added,
            _ when Starts("m") && suffix.Any(char.IsAsciiDigit) => ChordFamily.MinorSeventh,
            _ when Starts("7") || Starts("9") || Starts("11") || Starts("13") => ChordFamily.Dominant,
            _ => ChordFamily.Other,
        };
    }
}
