namespace Clampwise.Practice;

/// <summary>What every event carries from outside: when it happened, and a fresh identity for whatever is written down because of it.</summary>
/// <param name="Now">When.</param>
/// <param name="Id">Fresh; that of a shown question becomes the id of its attempt.</param>
public readonly record struct Stamp(Moment Now, EntryId Id)
{
    /// <summary>A second identity, made from the first, for when one event is written down twice.</summary>
    internal EntryId SecondId
    {
        get
        {
            byte[] bytes = Id.Value.ToByteArray();
            bytes[^1] ^= 0xFF;
            return new EntryId(new Guid(bytes));
        }
    }
}
