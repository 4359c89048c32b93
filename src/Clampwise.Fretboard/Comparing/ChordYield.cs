using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>How many easy voicings two setups give of some chords.</summary>
public sealed class ChordYield
{
    /// <summary>
    /// The greatest difficulty that counts as easy, in points: an open C or G in standard tuning lies within it, a barre across six
    /// strings does not (our judgement).
    /// </summary>
    public const double EasyPoints = 4.5;

    /// <summary>The fewest strings that a voicing to strum has.</summary>
    public const int FewestStrings = 4;

    private ChordYield(Setup first, Setup second, ImmutableArray<ChordYieldLine> chords) =>
        (First, Second, Chords) = (first, second, chords);

    /// <summary>The first setup.</summary>
    public Setup First { get; }

    /// <summary>The second setup.</summary>
    public Setup Second { get; }

    /// <summary>The chords in the order given.</summary>
    public ImmutableArray<ChordYieldLine> Chords { get; }

    /// <summary>
    /// The setup that has an easy voicing for more of the chords; then the one with more of them. Null if neither leads.
    /// </summary>
    public Setup? Better
    {
        get
        {
            int lead = (Chords.Count(chord => chord.First > 0), Chords.Sum(chord => chord.First))
                .CompareTo((Chords.Count(chord => chord.Second > 0), Chords.Sum(chord => chord.Second)));
            return lead == 0 ? null : lead > 0 ? First : Second;
        }
    }

    /// <summary>The comparison, one line a chord and one for the whole.</summary>
    public IEnumerable<string> Lines => Chords.Select(chord => chord.ToString()).Append(
        Better is { } better ? $"{better} gives more of these chords easily" : "neither setup leads");

    /// <summary>Counts the easy voicings of chords named at concert pitch, under any correct name.</summary>
    public static ChordYield Of(Finder first, Finder second, IEnumerable<ChordSymbol> chords) => new(
        first.Setup, second.Setup, [.. chords.Select(chord => new ChordYieldLine(chord, Count(first, chord), Count(second, chord)))]);

    private static int Count(Finder finder, ChordSymbol chord) => finder.Find(new VoicingQuery
    {
        SoundingName = chord,
        MaxDifficulty = EasyPoints,
        MinStrings = FewestStrings,
        Limit = 0,
    }).Value.Total;
}
