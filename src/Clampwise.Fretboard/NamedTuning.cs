using System.Collections.Immutable;

namespace Clampwise.Fretboard;

/// <summary>A tuning with the names it goes by.</summary>
/// <param name="Name">The name that is printed.</param>
/// <param name="Aliases">Other names that are read.</param>
/// <param name="Tuning">The open pitches.</param>
/// <param name="AboveLetters">
/// Semitones that it lies above the tuning whose letters shapes take in it: -1 half a step down, 0 for a tuning of its own.
/// </param>
public sealed record NamedTuning(string Name, ImmutableArray<string> Aliases, Tuning Tuning, int AboveLetters = 0)
{
    /// <summary>The names of its open strings without octaves, lowest first and closed up, such as <c>DADF#AD</c>.</summary>
    public string Letters { get; } = string.Concat(Tuning.Pitches.Select(pitch => pitch.Class));

    /// <summary>True if it goes by the name: whatever its case, or spelled as its letters in the case that notes are written in.</summary>
    public bool Answers(string name) =>
        string.Equals(Name, name, StringComparison.OrdinalIgnoreCase)
        || Aliases.Contains(name, StringComparer.OrdinalIgnoreCase)
        || string.Equals(Letters, name.Replace(" ", "", StringComparison.Ordinal), StringComparison.Ordinal);
}
