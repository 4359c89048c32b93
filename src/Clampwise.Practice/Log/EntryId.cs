using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>
/// The identity of a log entry. That of an attempt is made when its question is shown, so that the same answer written twice
/// counts once, on whichever machine.
/// </summary>
/// <param name="Value">Made outside by the maker of identities that is passed in.</param>
public readonly record struct EntryId(Guid Value) : IComparable<EntryId>
{
    /// <summary>Reads 32 hexadecimal digits.</summary>
    public static Result<EntryId> Parse(string text) =>
        Guid.TryParseExact(text, "N", out Guid value) ? new EntryId(value) : PracticeWords.BadId(text);

    /// <inheritdoc/>
    public int CompareTo(EntryId other) => Value.CompareTo(other.Value);

    public static bool operator <(EntryId left, EntryId right) => left.CompareTo(right) < 0;

    public static bool operator >(EntryId left, EntryId right) => left.CompareTo(right) > 0;

    public static bool operator <=(EntryId left, EntryId right) => left.CompareTo(right) <= 0;

    public static bool operator >=(EntryId left, EntryId right) => left.CompareTo(right) >= 0;

    /// <summary>32 hexadecimal digits.</summary>
    public override string ToString() => Value.ToString("N");
}
