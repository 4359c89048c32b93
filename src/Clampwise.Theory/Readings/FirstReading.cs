namespace Clampwise.Theory;

/// <summary>
/// The first reading of a set of pitches in its shortest form: found without allocation, for voicings by the hundred thousand.
/// The default is silence.
/// </summary>
/// <param name="Kind">What sort of thing sounds.</param>
/// <param name="Root">The root, if there is a quality; else the bass.</param>
/// <param name="Quality">The quality; none if no symbol names the pitches.</param>
/// <param name="Bass">The lowest pitch class.</param>
/// <param name="Key">The key that it was read in, if any.</param>
public readonly record struct FirstReading(SonorityKind Kind, PitchClass Root, ChordQuality? Quality, PitchClass Bass, MusicalKey? Key)
{
    /// <summary>The symbol, spelled in house style; none without a quality.</summary>
    public ChordSymbol? Symbol => Quality is { } quality ? ChordSymbol.Of(Root, quality, Bass, Key) : null;

    /// <summary>Reads pitches in any order, in a key or in none.</summary>
    public static FirstReading Of(ReadOnlySpan<Pitch> pitches, MusicalKey? key = null)
    {
        var heard = HeardTones.Of(pitches);
        ReadingCandidate? first = ReadingOrder.First(heard, key);
        SonorityKind kind = ReadingOrder.Kind(heard, first);
        PitchClass bass = heard.Bass;
        return first is { } name
            ? new FirstReading(kind, bass + name.RootAboveBass, name.Quality, bass, key)
            : new FirstReading(kind, bass, null, bass, key);
    }

    /// <summary>True if this is the chord of a symbol over the symbol's bass, whatever its spelling.</summary>
    public bool Is(ChordSymbol symbol) =>
        Quality is { } quality && symbol.Root.Class == Root && symbol.BassClass == Bass && quality.HasTonesOf(symbol.Quality);
}
