using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>The library of named tunings. Which tunings bear which names is common practice, no source.</summary>
public static class NamedTunings
{
    private static readonly ImmutableArray<(string Name, Tuning Tuning)> s_all =
    [
        ("standard", Tuning.Standard),
        Entry("drop D", "D2 A2 D3 G3 B3 E4"),
        Entry("double drop D", "D2 A2 D3 G3 B3 D4"),
        Entry("DADGAD", "D2 A2 D3 G3 A3 D4"),
        Entry("open D", "D2 A2 D3 F#3 A3 D4"),
        Entry("open G", "D2 G2 D3 G3 B3 D4"),
        Entry("open A", "E2 A2 E3 A3 C#4 E4"),
        Entry("open E", "E2 B2 E3 G#3 B3 E4"),
    ];

    /// <summary>All named tunings.</summary>
    public static IEnumerable<(string Name, Tuning Tuning)> All => s_all;

    /// <summary>The tuning of a name, whatever its case, or null.</summary>
    public static Tuning? Find(string name) =>
        s_all.FirstOrDefault(entry => string.Equals(entry.Name, name, StringComparison.OrdinalIgnoreCase)).Tuning;

    /// <summary>The first name of a tuning, or null.</summary>
    public static string? NameOf(Tuning tuning) => s_all.FirstOrDefault(entry => entry.Tuning.Equals(tuning)).Name;

    private static (string Name, Tuning Tuning) Entry(string name, string pitches) =>
        (name, Tuning.Create(pitches.Split(' ').Select(text => Pitch.Parse(text).Value)).Value);
}
