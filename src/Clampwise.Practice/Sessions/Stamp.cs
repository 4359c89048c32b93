namespace Clampwise.Practice;

/// <summary>What every event carries from outside: when it happened, and a fresh identity for whatever is written down because of it.</summary>
/// <param name="Now">When.</param>
/// <param name="Id">Fresh; that of a shown question becomes the id of its attempt.</param>
public readonly record struct Stamp(Moment Now, EntryId Id);
