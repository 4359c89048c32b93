namespace Clampwise.Theory;

/// <summary>
/// A spelled interval upward or downward: letter steps and a place on the line of fifths. The default is the perfect unison.
/// Qualities follow the theory of tonal intervals: unisons, fourths and fifths are perfect, the others major or minor.
/// </summary>
/// <param name="Fifths">Distance on the line of fifths: perfect fifth 1, major second 2, minor third -3.</param>
/// <param name="Steps">Letter steps: unison 0, third 2, octave 7; negative downward.</param>
public readonly record struct Interval(int Fifths, int Steps)
{
    private const string Perfect = "P";

    /// <summary>Semitones: negative downward.</summary>
    // Each step is four fifths less whole octaves; what fifths remain are sevens, each a chromatic semitone.
    public int Semitones
    {
        get
        {
            int octaves = (Steps - (Fifths * 4)) / 7;
            return (Fifths * 7) + (octaves * 12);
        }
    }

    /// <summary>The number that musicians say: 1 for a unison, 3 for a third, 9 for a ninth; its sign falls away.</summary>
    public int Number => Math.Abs(Steps) + 1;

    public static Interval operator +(Interval left, Interval right) => new(left.Fifths + right.Fifths, left.Steps + right.Steps);

    public static Interval operator -(Interval left, Interval right) => new(left.Fifths - right.Fifths, left.Steps - right.Steps);

    public static Interval operator -(Interval interval) => new(-interval.Fifths, -interval.Steps);

    /// <summary>
    /// An interval from its number and how far it lies from the perfect or major one of that number: (3, -1) is a minor third,
    /// (5, 1) an augmented fifth, (7, -2) a diminished seventh. Throws for a number below 1.
    /// </summary>
    public static Interval Of(int number, int alteration = 0)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(number, 1);
        int steps = number - 1;
        // Major and perfect intervals above C lie from F (-1) to B (5) on the line of fifths.
        int natural = NoteName.Mod((steps * 2) + 1, 7) - 1;
        return new Interval(natural + (7 * alteration), steps);
    }

    /// <summary>The interval from one spelled pitch up to another.</summary>
    public static Interval Between(SpelledPitch from, SpelledPitch to) =>
        new(to.Name.Fifths - from.Name.Fifths, to.Name.Step - from.Name.Step + (7 * (to.Octave - from.Octave)));

    /// <summary>Semitones away from the perfect or major interval of the same number.</summary>
    public int Alteration => Steps < 0 ? (-this).Alteration : (Fifths - Of(Number).Fifths) / 7;

    /// <summary>Short name: P5, m3, M9, A4, d7; a minus before it when downward.</summary>
    public override string ToString()
    {
        string sign = Steps < 0 ? "-" : "";
        bool isPerfectKind = NoteName.Mod(Number, 7) is 1 or 4 or 5;
        int alteration = Alteration;
        string quality = (isPerfectKind, alteration) switch
        {
            (true, 0) => Perfect,
            (false, 0) => "M",
            (false, -1) => "m",
            (_, > 0) => new string('A', alteration),
            (true, _) => new string('d', -alteration),
            (false, _) => new string('d', -alteration - 1),
        };
        return $"{sign}{quality}{Number}";
    }
}
