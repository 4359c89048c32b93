using System.Collections.Immutable;

namespace Clampwise.Theory;

/// <summary>
/// What a chord symbol says apart from root and bass. What is written in several ways is brought to one form when it is made: m with b5
/// is diminished, 7 with an added 9 is a 9, a 2 added is a 9, an 11 added to a chord without a seventh is a 4.
/// </summary>
public sealed record ChordQuality
{
    internal ChordQuality(TriadKind triad, ChordExtent stack, SeventhKind seventh, DegreeSet altered, DegreeSet added, DegreeSet omitted)
    {
        (Triad, Extent, Seventh, Altered, Added, Omitted) = (triad, stack, seventh, altered, added, omitted);
        Tones = ChordTones.Of(this);
    }

    /// <summary>The major triad.</summary>
    public static ChordQuality Major { get; } = new(TriadKind.Major, ChordExtent.Triad, SeventhKind.None, default, default, default);

    /// <summary>The triad.</summary>
    public TriadKind Triad { get; }

    /// <summary>How far it is built up.</summary>
    public ChordExtent Extent { get; }

    /// <summary>Which seventh; <see cref="SeventhKind.None"/> below <see cref="ChordExtent.Seventh"/>.</summary>
    public SeventhKind Seventh { get; }

    /// <summary>Fifths and, beside a sixth or seventh, ninths, elevenths and thirteenths that are raised or lowered.</summary>
    public DegreeSet Altered { get; }

    /// <summary>Tones added to what triad and stack hold.</summary>
    public DegreeSet Added { get; }

    /// <summary>Numbers of tones said to be left out, without alteration.</summary>
    public DegreeSet Omitted { get; }

    /// <summary>All tones in rising order, the root first; the sus2 is called 2 and the sus4 4.</summary>
    public ImmutableArray<ChordDegree> Tones { get; }

    /// <summary>True if its key signature would be a minor one: the third is minor.</summary>
    public bool IsMinor => Triad is TriadKind.Minor or TriadKind.Diminished;

    /// <summary>True for a major or minor triad and nothing more.</summary>
    public bool IsPlainTriad => Triad is TriadKind.Major or TriadKind.Minor && Extent == ChordExtent.Triad
        && Added.IsEmpty && Altered.IsEmpty && Omitted.IsEmpty;

    /// <summary>True if both mean the same tones by the same names, perhaps in other words: 9(add13) and 13(no11).</summary>
    public bool HasTonesOf(ChordQuality other) => ReferenceEquals(this, other) || Tones.AsSpan().SequenceEqual(other.Tones.AsSpan());

    /// <summary>Reads what stands after the root, such as m7b5 or sus4, and nothing more.</summary>
    public static Result<ChordQuality> Parse(string text) => ChordQualityParser.ParseWhole(text);

    /// <inheritdoc/>
    public bool Equals(ChordQuality? other) =>
        other is not null && (Triad, Extent, Seventh) == (other.Triad, other.Extent, other.Seventh)
        && Altered == other.Altered && Added == other.Added && Omitted == other.Omitted;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Triad, Extent, Seventh, Altered, Added, Omitted);

    /// <summary>House style, without a root: m7b5, 7(b9,#11), sus4, and nothing for the major triad.</summary>
    public override string ToString() => ChordQualityText.Of(this);
}
