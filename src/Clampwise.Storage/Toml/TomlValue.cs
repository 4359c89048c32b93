using System.Collections.Immutable;

namespace Clampwise.Storage;

/// <summary>A value of a TOML text.</summary>
/// <param name="At">Where it stands.</param>
/// <param name="Start">Its first character: an offset into the text.</param>
/// <param name="End">The offset after its last character.</param>
/// <param name="Written">How it is written there.</param>
public abstract record TomlValue(TextPlace At, int Start, int End, string Written)
{
    /// <summary>A string.</summary>
    public sealed record Text(TextPlace At, int Start, int End, string Written, string Value) : TomlValue(At, Start, End, Written);

    /// <summary>A whole number.</summary>
    public sealed record Whole(TextPlace At, int Start, int End, string Written, long Value) : TomlValue(At, Start, End, Written);

    /// <summary>A number with a fraction.</summary>
    public sealed record Real(TextPlace At, int Start, int End, string Written, double Value) : TomlValue(At, Start, End, Written);

    /// <summary>True or false.</summary>
    public sealed record Flag(TextPlace At, int Start, int End, string Written, bool Value) : TomlValue(At, Start, End, Written);

    /// <summary>A list.</summary>
    public sealed record List(TextPlace At, int Start, int End, string Written, ImmutableArray<TomlValue> Items) : TomlValue(At, Start, End, Written);

    /// <summary>What no file of ours holds, such as a date or an inline table with nothing in it.</summary>
    public sealed record Other(TextPlace At, int Start, int End, string Written) : TomlValue(At, Start, End, Written);
}
