namespace Clampwise.Fretboard;

/// <summary>The number of a string as the trade counts: 1 is the highest in pitch and the default; at most 8.</summary>
public readonly record struct StringNumber : IComparable<StringNumber>
{
    /// <summary>The most strings that an instrument may have here.</summary>
    public const int Most = 8;

    private readonly byte _below;

    private StringNumber(int number) => _below = (byte)(number - 1);

    /// <summary>1 to 8.</summary>
    public int Number => _below + 1;

    /// <summary>A string by its number. Throws outside 1 to 8.</summary>
    public static StringNumber Of(int number) => number is >= 1 and <= Most
        ? new StringNumber(number)
        : throw new ArgumentOutOfRangeException(nameof(number), number, "Strings are numbered from 1 to 8.");

    /// <summary>The string at a place in a list that goes from the lowest string (0) to the highest.</summary>
    public static StringNumber AtIndex(int index, int stringCount) => Of(stringCount - index);

    /// <summary>The place in a list that goes from the lowest string (0) to the highest.</summary>
    public int IndexAmong(int stringCount) => stringCount - Number;

    /// <inheritdoc/>
    public int CompareTo(StringNumber other) => _below.CompareTo(other._below);

    public static bool operator <(StringNumber left, StringNumber right) => left._below < right._below;

    public static bool operator >(StringNumber left, StringNumber right) => left._below > right._below;

    public static bool operator <=(StringNumber left, StringNumber right) => left._below <= right._below;

    public static bool operator >=(StringNumber left, StringNumber right) => left._below >= right._below;

    /// <inheritdoc/>
    public override string ToString() => Number.ToString();
}
