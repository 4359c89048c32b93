using System.Globalization;
using System.Numerics;
using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>A set of strings, written as <c>2-4</c>, <c>1,3,5</c> or <c>1-2,6</c>. The default is the empty set.</summary>
public readonly record struct StringSet
{
    private const NumberStyles Number = NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite;
    private readonly byte _bits;

    private StringSet(int bits) => _bits = (byte)bits;

    /// <summary>One bit a string, string 1 the lowest bit.</summary>
    internal int Bits => _bits;

    /// <summary>How many strings are in the set.</summary>
    public int Count => BitOperations.PopCount(_bits);

    /// <summary>All strings of an instrument with so many.</summary>
    public static StringSet All(int stringCount) => new((1 << stringCount) - 1);

    /// <summary>The set of the given strings.</summary>
    public static StringSet Of(IEnumerable<StringNumber> strings) =>
        new(strings.Aggregate(0, (bits, number) => bits | Bit(number)));

    /// <summary>True if the string is in the set.</summary>
    public bool Contains(StringNumber number) => (_bits & Bit(number)) != 0;

    /// <summary>The strings in either set.</summary>
    public StringSet Union(StringSet other) => new(_bits | other._bits);

    /// <summary>The strings in both sets.</summary>
    public StringSet Intersect(StringSet other) => new(_bits & other._bits);

    /// <summary>The strings of this set that are not in the other.</summary>
    public StringSet Except(StringSet other) => new(_bits & ~other._bits);

    /// <summary>The strings, the highest in pitch (1) first.</summary>
    public IEnumerable<StringNumber> Strings
    {
        get
        {
            for (int number = 1; number <= StringNumber.Most; number++)
            {
                if (Contains(StringNumber.Of(number)))
                {
                    yield return StringNumber.Of(number);
                }
            }
        }
    }

    /// <summary>The strings at the same places counted from the other side: of six, string 1 becomes string 6.</summary>
    public StringSet Mirrored(int stringCount) => Of(Strings.Select(number => StringNumber.Of(stringCount + 1 - number.Number)));

    /// <summary>Reads a set such as <c>2-4</c> or <c>1,3,5</c> for an instrument with so many strings.</summary>
    public static Result<StringSet> Parse(string text, int stringCount)
    {
        StringSet set = default;
        int column = 0;
        foreach (string part in text.Split(','))
        {
            if (!ParseRange(part, column, stringCount).TryGet(out StringSet range, out Fault? fault))
            {
                return fault;
            }

            set = set.Union(range);
            column += part.Length + 1;
        }

        return set;
    }

    private static Result<StringSet> ParseRange(string part, int column, int stringCount)
    {
        string[] ends = part.Split('-');
        var numbers = new int[ends.Length];
        int at = column;
        for (int i = 0; i < ends.Length; at += ends[i].Length + 1, i++)
        {
            if (ends.Length > 2 || !int.TryParse(ends[i], Number, CultureInfo.InvariantCulture, out numbers[i]))
            {
                return FretboardWords.ExpectedStrings(part.Trim(), column + SpacedWords.Indent(part));
            }

            if (numbers[i] < 1 || numbers[i] > stringCount)
            {
                return FretboardWords.NoSuchString(numbers[i], stringCount, at + SpacedWords.Indent(ends[i]));
            }
        }

        (int low, int high) = (Math.Min(numbers[0], numbers[^1]), Math.Max(numbers[0], numbers[^1]));
        return Of(Enumerable.Range(low, high - low + 1).Select(StringNumber.Of));
    }

    /// <summary>The strings as runs, such as <c>2-4</c> or <c>1-2,6</c>.</summary>
    public override string ToString()
    {
        var runs = new List<(int First, int Last)>();
        foreach (int number in Strings.Select(s => s.Number))
        {
            if (runs.Count > 0 && runs[^1].Last == number - 1)
            {
                runs[^1] = (runs[^1].First, number);
            }
            else
            {
                runs.Add((number, number));
            }
        }

        return string.Join(',', runs.Select(run => run.First == run.Last ? $"{run.First}" : $"{run.First}-{run.Last}"));
    }

    private static int Bit(StringNumber number) => 1 << (number.Number - 1);
}
