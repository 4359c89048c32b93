using System.Collections.Immutable;
using Clampwise.Fretboard;

namespace Clampwise.Practice;

/// <summary>One step of help; each one shown costs grade.</summary>
/// <param name="Words">What it says.</param>
public sealed record Hint(string Words)
{
    /// <summary>Strings of the right shape that may now be shown.</summary>
    public StringSet Shown { get; init; }

    /// <summary>Choices that are now known to be wrong, by index.</summary>
    public ImmutableArray<int> RuledOut { get; init; } = [];

    /// <summary>True if the question is now played one string after another, lowest first.</summary>
    public bool IsArpeggio { get; init; }
}
