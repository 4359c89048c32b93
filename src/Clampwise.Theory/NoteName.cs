namespace Clampwise.Theory;

/// <summary>
/// A letter with its accidentals, held as the position on the line of fifths: C is 0 and the default, G 1, F -1, F# 6, Bb -2.
/// Positions run from Fbbb (-22) to B### (26): three accidentals cover every degree of every root in use.
/// </summary>
public readonly record struct NoteName
{
    /// <summary>The lowest position: F with three flats.</summary>
    public const int LowestFifths = -22;

    /// <summary>The highest position: B with three sharps.</summary>
    public const int HighestFifths = 26;

    private const string LettersByFifths = "FCGDAEB";
    private const string LettersByStep = "CDEFGAB";
    private readonly sbyte _fifths;

    private NoteName(int fifths) => _fifths = (sbyte)fifths;

    /// <summary>Position on the line of fifths.</summary>
    public int Fifths => _fifths;

    /// <summary>The letter, A to G.</summary>
    public char Letter => LettersByFifths[Mod(_fifths + 1, 7)];

    /// <summary>Sharps if positive, flats if negative: -3 to 3.</summary>
    public int Accidentals => FloorDiv(_fifths + 1, 7);

    /// <summary>Steps of the letter above C: 0 (C) to 6 (B).</summary>
    public int Step => LettersByStep.IndexOf(Letter, StringComparison.Ordinal);

    /// <summary>Semitones of the natural letter above C.</summary>
    internal int NaturalSemitones => Mod((Mod(_fifths + 1, 7) - 1) * 7, 12);

    /// <summary>The pitch class that it names.</summary>
    public PitchClass Class => PitchClass.Of(_fifths * 7);

    /// <summary>The name at a position on the line of fifths. Throws outside <see cref="LowestFifths"/> to <see cref="HighestFifths"/>.</summary>
    public static NoteName FromFifths(int fifths) => fifths is >= LowestFifths and <= HighestFifths
        ? new NoteName(fifths)
        : throw new ArgumentOutOfRangeException(nameof(fifths), fifths, TheoryWords.FifthsOutOfRange);

    /// <summary>
    /// The spelling most often seen for a pitch class away from any key: C C# D Eb E F F# G G# A Bb B (common practice, no source).
    /// </summary>
    public static NoteName Usual(PitchClass pitchClass)
    {
        // On the line of fifths these twelve run from Eb (-3) to G# (8).
        int fifths = Mod(pitchClass.Number * 7, 12);
        return new NoteName(fifths > 8 ? fifths - 12 : fifths);
    }

    /// <summary>The name an interval above.</summary>
    public static NoteName operator +(NoteName name, Interval interval) => FromFifths(name._fifths + interval.Fifths);

    /// <summary>The name an interval below.</summary>
    public static NoteName operator -(NoteName name, Interval interval) => FromFifths(name._fifths - interval.Fifths);

    /// <summary>Reads a letter (A to G, upper case) with up to three accidentals, typed (# b) or drawn (♯ ♭), at the start of a text.</summary>
    /// <returns>The name and how many characters it took.</returns>
    internal static Result<(NoteName Name, int Length)> ParseStart(string text, int start)
    {
        if (start >= text.Length || !LettersByStep.Contains(text[start], StringComparison.Ordinal))
        {
            return TheoryWords.ExpectedLetter(text, start);
        }

        int end = start + 1;
        int accidentals = 0;
        while (end < text.Length && Accidental(text[end]) is int sign && sign != 0)
        {
            if (accidentals * sign < 0 || Math.Abs(accidentals + sign) > 3)
            {
                return TheoryWords.TooManyAccidentals(end);
            }

            accidentals += sign;
            end++;
        }

        int fifths = LettersByFifths.IndexOf(text[start], StringComparison.Ordinal) - 1 + (7 * accidentals);
        return (FromFifths(fifths), end - start);
    }

    /// <summary>Reads a whole text as a note name, such as C, F#, B♭ or Ebb.</summary>
    public static Result<NoteName> Parse(string text) =>
        ParseStart(text, 0).Then<NoteName>(part => part.Length == text.Length ? part.Name : TheoryWords.NothingMore(text, part.Length));

    /// <summary>Letter and typed accidentals, such as F# or Bb.</summary>
    public override string ToString() => Letter + new string(Accidentals < 0 ? 'b' : '#', Math.Abs(Accidentals));

    internal static int Accidental(char sign) => sign switch { '#' or '♯' => 1, 'b' or '♭' => -1, _ => 0 };

    internal static int Mod(int value, int modulus) => ((value % modulus) + modulus) % modulus;

    internal static int FloorDiv(int value, int divisor) => (value - Mod(value, divisor)) / divisor;
}
