namespace Clampwise.Fretboard;

/// <summary>
/// A fret counted from the nut: 0 is the nut itself and the default, 24 the last fret of the longest common neck (common practice,
/// no source). A fret counted from the home clamp is another thing: see <see cref="HomeFret"/>.
/// </summary>
public readonly record struct Fret : IComparable<Fret>
{
    /// <summary>The last fret of the neck.</summary>
    public const int Last = 24;

    private readonly byte _number;

    private Fret(int number) => _number = (byte)number;

    /// <summary>The nut.</summary>
    public static Fret Nut => default;

    /// <summary>0 to 24; also the semitones that it adds to the string's tuning pitch.</summary>
    public int Number => _number;

    /// <summary>A fret by its number. Throws outside 0 to 24.</summary>
    public static Fret Of(int number) => number is >= 0 and <= Last
        ? new Fret(number)
        : throw new ArgumentOutOfRangeException(nameof(number), number, "Frets are numbered from 0, the nut, to 24.");

    /// <summary>Frets from the second up to the first.</summary>
    public static int operator -(Fret upper, Fret lower) => upper._number - lower._number;

    public static bool operator <(Fret left, Fret right) => left._number < right._number;

    public static bool operator >(Fret left, Fret right) => left._number > right._number;

    public static bool operator <=(Fret left, Fret right) => left._number <= right._number;

    public static bool operator >=(Fret left, Fret right) => left._number >= right._number;

    /// <inheritdoc/>
    public int CompareTo(Fret other) => _number.CompareTo(other._number);

    /// <inheritdoc/>
    public override string ToString() => _number.ToString();
}
