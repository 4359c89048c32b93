using System.Collections.Immutable;

namespace Clampwise.Theory;

/// <summary>A chord's quality as MusicXML 4.0 writes it: one of the 33 kind values and the degrees that change it.</summary>
public sealed class MusicXmlKind
{
    private static readonly (string Kind, ChordQuality Quality)[] s_chords =
        [.. Chords.Select(pair => (pair.Kind, ChordQuality.Parse(pair.Text).Value))];

    private MusicXmlKind(string kind, ImmutableArray<MusicXmlDegree> degrees) => (Kind, Degrees) = (kind, degrees);

    /// <summary>The kind value.</summary>
    public string Kind { get; }

    /// <summary>Its degrees in rising order.</summary>
    public ImmutableArray<MusicXmlDegree> Degrees { get; }

    // kind-value of MusicXML 4.0, as far as it lists tones above a root, in its order.
    private static (string Kind, string Text)[] Chords =>
    [
        ("major", ""), ("minor", "m"), ("augmented", "aug"), ("diminished", "dim"),
        ("dominant", "7"), ("major-seventh", "maj7"), ("minor-seventh", "m7"), ("diminished-seventh", "dim7"), ("augmented-seventh", "7#5"),
        ("half-diminished", "m7b5"), ("major-minor", "m(maj7)"), ("major-sixth", "6"), ("minor-sixth", "m6"),
        ("dominant-ninth", "9"), ("major-ninth", "maj9"), ("minor-ninth", "m9"),
        ("dominant-11th", "11"), ("major-11th", "maj11"), ("minor-11th", "m11"),
        ("dominant-13th", "13"), ("major-13th", "maj13"), ("minor-13th", "m13"),
        ("suspended-second", "sus2"), ("suspended-fourth", "sus4"), ("power", "5"),
    ];

    /// <summary>The kind that needs the fewest degrees to say a quality; of equal ones the one with the same seventh.</summary>
    public static MusicXmlKind Of(ChordQuality quality) => s_chords
        .Select(chord => (chord.Kind, Degrees: Changes(chord.Quality, quality), HasSeventh: chord.Quality.Seventh == quality.Seventh))
        .OrderBy(found => found.Degrees.Length).ThenByDescending(found => found.HasSeventh)
        .Select(found => new MusicXmlKind(found.Kind, found.Degrees))
        .First();

    /// <summary>The quality that a kind value and its degrees say, or why no chord symbol says it.</summary>
    public static Result<ChordQuality> ToQuality(string kind, params ReadOnlySpan<MusicXmlDegree> degrees)
    {
        ChordQuality? start = s_chords.FirstOrDefault(chord => chord.Kind == kind).Quality;
        return start is null ? TheoryWords.NoChordOfKind(kind) : MusicXmlReader.Change(start, degrees);
    }

    /// <summary>The kind, and its degrees in parentheses.</summary>
    public override string ToString() =>
        Degrees.IsEmpty ? Kind : $"{Kind} ({string.Join(", ", Degrees)})";

    private static ImmutableArray<MusicXmlDegree> Changes(ChordQuality from, ChordQuality to)
    {
        var changes = ImmutableArray.CreateBuilder<MusicXmlDegree>();
        foreach (var tones in from.Tones.Concat(to.Tones).Distinct().GroupBy(tone => tone.Number).OrderBy(group => group.Key))
        {
            ChordDegree[] had = [.. tones.Where(tone => from.Tones.Contains(tone) && !to.Tones.Contains(tone))];
            ChordDegree[] gets = [.. tones.Where(tone => to.Tones.Contains(tone) && !from.Tones.Contains(tone))];
            int altered = Math.Min(had.Length, gets.Length);
            changes.AddRange(gets.Zip(had, Altered));
            changes.AddRange(gets.Skip(altered).Select(Added));
            changes.AddRange(had.Skip(altered).Select(tone => new MusicXmlDegree(tone.Number, 0, MusicXmlDegreeType.Subtract)));
        }

        return changes.ToImmutable();
    }

    private static MusicXmlDegree Altered(ChordDegree to, ChordDegree from) =>
        new(to.Number, to.Alteration - from.Alteration, MusicXmlDegreeType.Alter);

    private static MusicXmlDegree Added(ChordDegree tone) =>
        new(tone.Number, tone.Number == 7 ? tone.Alteration + 1 : tone.Alteration, MusicXmlDegreeType.Add);
}
