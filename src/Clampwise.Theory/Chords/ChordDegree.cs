namespace Clampwise.Theory;

/// <summary>
/// A tone of a chord counted from its root as the trade counts: the major scale of the root gives 1 to 13, a flat or sharp moves it,
/// so 3 is the major third, b7 the minor seventh and bb7 the diminished one. The default is the root.
/// </summary>
public readonly record struct ChordDegree : IComparable<ChordDegree>
{
    /// <summary>The highest number: a fifteenth would be the root again.</summary>
    public const int HighestNumber = 13;

    /// <summary>The lowest alteration: the diminished seventh needs two flats.</summary>
    public const int LowestAlteration = -2;

    /// <summary>The highest alteration.</summary>
    public const int HighestAlteration = 1;

    private const int Alterations = HighestAlteration - LowestAlteration + 1;
    private readonly byte _numberLessOne;
    private readonly sbyte _alteration;

    private ChordDegree(int number, int alteration) => (_numberLessOne, _alteration) = ((byte)(number - 1), (sbyte)alteration);

    /// <summary>The root.</summary>
    public static ChordDegree Root => default;

    /// <summary>1 (root) to 13.</summary>
    public int Number => _numberLessOne + 1;

    /// <summary>Semitones away from the major or perfect interval of that number: -2 to 1.</summary>
    public int Alteration => _alteration;

    /// <summary>The interval from the root upward.</summary>
    public Interval Interval => Interval.Of(Number, _alteration);

    /// <summary>Semitones above the root within the octave: 0 to 11.</summary>
    public int Semitones => PitchClass.Of(Interval.Semitones).Number;

    /// <summary>A place of its own for every degree, below 64.</summary>
    internal int Index => (_numberLessOne * Alterations) + _alteration - LowestAlteration;

    /// <summary>A degree from its number and alteration. Throws outside 1 to 13 and -2 to 1.</summary>
    public static ChordDegree Of(int number, int alteration = 0)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(number, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(number, HighestNumber);
        ArgumentOutOfRangeException.ThrowIfLessThan(alteration, LowestAlteration);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(alteration, HighestAlteration);
        return new ChordDegree(number, alteration);
    }

    public static bool operator <(ChordDegree left, ChordDegree right) => left.Index < right.Index;

    public static bool operator >(ChordDegree left, ChordDegree right) => left.Index > right.Index;

    public static bool operator <=(ChordDegree left, ChordDegree right) => left.Index <= right.Index;

    public static bool operator >=(ChordDegree left, ChordDegree right) => left.Index >= right.Index;

    /// <summary>By number, then by alteration.</summary>
    public int CompareTo(ChordDegree other) => Index.CompareTo(other.Index);

    /// <summary>As fretboard charts write it: R, b3, 5, bb7, #11.</summary>
    public override string ToString() => this == Root ? "R" : Signs + Number;

    /// <summary>The accidentals alone.</summary>
    internal string Signs => new(_alteration < 0 ? 'b' : '#', Math.Abs(_alteration));

    internal static ChordDegree FromIndex(int index) => new((index / Alterations) + 1, (index % Alterations) + LowestAlteration);
}
