namespace Clampwise.Fretboard;

/// <summary>Tables of all that two neighbouring strings can do, so that eight strings are read in four steps.</summary>
internal static class StringPairs
{
    /// <summary>How many pairs there are.</summary>
    public const int Count = StringNumber.Most / 2;

    private const int StopCodes = 1 << PackedVoicing.BitsEach;
    private const int PairBits = 2 * PackedVoicing.BitsEach;
    private const int PairCodes = 1 << PairBits;

    /// <summary>The place of a pair of a voicing in a table.</summary>
    public static int Place(PackedVoicing voicing, int pair) =>
        (pair << PairBits) | ((int)(voicing.Bits >> (pair * PairBits)) & (PairCodes - 1));

    /// <summary>A table from what one string does at a place and a stop, and from how two are put together.</summary>
    public static T[] Table<T>(Func<int, int, T> ofString, Func<T, T, T> together)
    {
        var table = new T[Count * PairCodes];
        for (int place = 0; place < table.Length; place++)
        {
            int low = (place >> PairBits) * 2;
            table[place] = together(ofString(low, place % StopCodes), ofString(low + 1, place / StopCodes % StopCodes));
        }

        return table;
    }
}
