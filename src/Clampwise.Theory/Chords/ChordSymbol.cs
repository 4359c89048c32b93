using System.Collections.Immutable;

namespace Clampwise.Theory;

/// <summary>A written chord name: root, quality, and a bass if it is another note than the root.</summary>
public sealed record ChordSymbol
{
    /// <summary>A symbol; a bass of the root's pitch class says nothing and falls away.</summary>
    public ChordSymbol(NoteName root, ChordQuality quality, NoteName? bass = null) =>
        (Root, Quality, Bass) = (root, quality, bass is { } other && other.Class != root.Class ? other : null);

    /// <summary>The root.</summary>
    public NoteName Root { get; }

    /// <summary>Everything between root and bass.</summary>
    public ChordQuality Quality { get; }

    /// <summary>The bass after the slash; none if the root is the bass.</summary>
    public NoteName? Bass { get; }

    /// <summary>The pitch class that sounds lowest.</summary>
    public PitchClass BassClass => (Bass ?? Root).Class;

    /// <summary>Every tone with its degree and spelling, the root first; a bass that is no tone of the chord is not among them.</summary>
    public ImmutableArray<ChordTone> Tones => [.. Quality.Tones.Select(degree => new ChordTone(degree, Root + degree.Interval))];

    /// <summary>
    /// Reads every common way to write a chord symbol: maj7 M7 Δ, m - min mi, ° dim o, ø m7b5, + aug, sus, 2 and 4 for added tones,
    /// 6/9 69, alterations with or without parentheses, no3 omit3, slash bass, typed and drawn accidentals.
    /// </summary>
    public static Result<ChordSymbol> Parse(string text) => ChordSymbolParser.Parse(text);

    /// <summary>How far another symbol says the same: the same chord, perhaps by an enharmonic root or bass.</summary>
    public ChordLikeness LikenessTo(ChordSymbol other)
    {
        bool isSameChord = Root.Class == other.Root.Class && Quality.HasTonesOf(other.Quality) && BassClass == other.BassClass;
        return !isSameChord ? ChordLikeness.OtherChord
            : Root == other.Root && Bass == other.Bass ? ChordLikeness.Same : ChordLikeness.OtherSpelling;
    }

    /// <summary>The chord so many semitones up, its root spelled as <see cref="ChordSpelling"/> says; whole octaves change nothing.</summary>
    public ChordSymbol TransposedBy(int semitones) =>
        semitones % PitchClass.Count == 0 ? this : Of(Root.Class + semitones, Quality, BassClass + semitones);

    /// <summary>The symbol as this house would spell it.</summary>
    public ChordSymbol Respelled => Of(Root.Class, Quality, BassClass);

    /// <summary>A symbol from pitch classes, root and bass spelled by <see cref="ChordSpelling"/>.</summary>
    /// <param name="root">The root.</param>
    /// <param name="quality">The quality.</param>
    /// <param name="bass">The lowest note.</param>
    /// <param name="key">The key that root and bass are spelled in; each chord for itself if null.</param>
    public static ChordSymbol Of(PitchClass root, ChordQuality quality, PitchClass bass, MusicalKey? key = null)
    {
        NoteName name = ChordSpelling.Root(root, quality, key);
        return new ChordSymbol(name, quality, ChordSpelling.Bass(name, quality, bass, key));
    }

    /// <summary>The symbol with root and bass as they are spelled in a key.</summary>
    public ChordSymbol In(MusicalKey key) => Of(Root.Class, Quality, BassClass, key);

    /// <summary>House style, such as F#m7b5 or D/F#.</summary>
    public override string ToString() => Bass is { } bass ? $"{Root}{Quality}/{bass}" : $"{Root}{Quality}";
}
