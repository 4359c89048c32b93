using System.Collections.Immutable;

namespace Clampwise.Storage;

/// <summary>One table of a TOML text.</summary>
/// <param name="Name">Its name, such as <c>session</c>; empty for what stands before the first table.</param>
/// <param name="IsListed">True if it is one of a list of tables, written <c>[[name]]</c>.</param>
/// <param name="At">Where it starts.</param>
/// <param name="End">Where its last value, or without one its head, ends: an offset into the text.</param>
/// <param name="Entries">Its values, with keys counted from the table.</param>
public sealed record TomlTable(string Name, bool IsListed, TextPlace At, int End, ImmutableArray<TomlEntry> Entries)
{
    /// <summary>A value of this table with its full key.</summary>
    internal TomlEntry InFull(TomlEntry entry) => entry with { Key = $"{Name}.{entry.Key}" };
}
