using System.Collections.Immutable;
using System.Globalization;
using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>
/// The library of named tunings, read from NamedTunings.txt. Which tunings bear which names is common practice, no source.
/// </summary>
public static class NamedTunings
{
    private static readonly Lazy<ImmutableArray<NamedTuning>> s_all = new(() => [.. ReadLines().Select(ReadEntry)]);

    /// <summary>All named tunings, the better known ones of each number of strings first.</summary>
    public static ImmutableArray<NamedTuning> All => s_all.Value;

    /// <summary>The tuning of a name or of its letters (<c>drop D</c>, <c>DADGBE</c>), or null.</summary>
    public static Tuning? Find(string name) =>
        (All.FirstOrDefault(entry => string.Equals(entry.Name, name, StringComparison.OrdinalIgnoreCase))
            ?? All.FirstOrDefault(entry => entry.Answers(name)))?.Tuning;

    /// <summary>The name of a tuning, or null.</summary>
    public static string? NameOf(Tuning tuning) => All.FirstOrDefault(entry => entry.Tuning.Equals(tuning))?.Name;

    /// <summary>The named tunings with the same intervals as some open strings: the one fewest semitones away first.</summary>
    public static ImmutableArray<TuningMatch> WithSameIntervals(IReadOnlyList<Pitch> openStrings) =>
    [
        .. All.Where(entry => HasSameIntervals(entry.Tuning, openStrings))
            .Select(entry => new TuningMatch(entry, openStrings[0] - entry.Tuning.Pitches[0]))
            .OrderBy(match => Math.Abs(match.SemitonesUp)),
    ];

    /// <summary>
    /// Semitones that a tuning lies above the one whose letters its shapes take: a named one that says so in the library, or the nearest named
    /// one with the same intervals.
    /// </summary>
    public static int AboveLetters(Tuning tuning) => WithSameIntervals(tuning.Pitches) is [var nearest, ..]
        ? nearest.SemitonesUp + nearest.Named.AboveLetters
        : 0;

    private static bool HasSameIntervals(Tuning tuning, IReadOnlyList<Pitch> pitches) =>
        tuning.StringCount == pitches.Count
        && tuning.Pitches.Select((pitch, i) => pitches[i] - pitch).Distinct().Count() == 1;

    private static IEnumerable<string> ReadLines()
    {
        using Stream stream = typeof(NamedTunings).Assembly.GetManifestResourceStream("Clampwise.Fretboard.NamedTunings.txt")!;
        using var reader = new StreamReader(stream);
        while (reader.ReadLine() is { } line)
        {
            if (line.Contains('=', StringComparison.Ordinal) && !line.StartsWith('#'))
            {
                yield return line;
            }
        }
    }

    private static NamedTuning ReadEntry(string line)
    {
        string[] sides = line.Split('=');
        string[] names = sides[0].Split('|', StringSplitOptions.TrimEntries);
        string[] words = sides[1].Split(',');
        IEnumerable<Pitch> pitches = words[0].Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(text => Pitch.Parse(text).Value);
        int aboveLetters = words.Length > 1 ? int.Parse(words[1], CultureInfo.InvariantCulture) : 0;
        return new NamedTuning(names[0], [.. names[1..]], Tuning.Create(pitches).Value, aboveLetters);
    }
}
