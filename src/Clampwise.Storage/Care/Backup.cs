namespace Clampwise.Storage;

/// <summary>A backup of the journal.</summary>
/// <param name="Name">The file's name: its date, how many entries it holds, and for one made before a migration the old version.</param>
/// <param name="Path">The full path.</param>
/// <param name="Date">The day on which it was made.</param>
/// <param name="Count">How many entries it holds, as its name says.</param>
/// <param name="Tag">Why it was made, if it was not the backup of a day; such ones are never deleted.</param>
public sealed record Backup(string Name, string Path, DateOnly Date, int Count, string? Tag);
