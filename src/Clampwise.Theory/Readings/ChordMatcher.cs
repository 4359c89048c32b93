namespace Clampwise.Theory;

/// <summary>
/// Tells, without allocation, whether pitches can rightly be called by one chord symbol: its bass lowest, every tone that it needs
/// sounding (perfect fifths and the lower extensions may be missing), nothing foreign but the bass.
/// </summary>
public sealed class ChordMatcher
{
    private readonly ChordFit _fit;
    private readonly PitchClass _bass;
    private readonly int _rootAboveBass;
    private readonly int _bassAboveRoot;

    /// <summary>A matcher for a symbol, whatever its spelling.</summary>
    public ChordMatcher(ChordSymbol symbol)
    {
        Symbol = symbol;
        _fit = ChordFit.Of(symbol.Quality);
        _bass = symbol.BassClass;
        _rootAboveBass = PitchClass.SemitonesUp(_bass, symbol.Root.Class);
        _bassAboveRoot = PitchClass.SemitonesUp(symbol.Root.Class, _bass);
    }

    /// <summary>The symbol.</summary>
    public ChordSymbol Symbol { get; }

    /// <summary>True if the pitches, in any order, can go by the symbol.</summary>
    public bool Fits(ReadOnlySpan<Pitch> pitches) =>
        TryHear(pitches, out ToneSet tones) && (_fit.Fits(tones, _bassAboveRoot) || _fit.FitsOver(tones, _bassAboveRoot));

    /// <summary>True if the pitches lack the third of the symbol and are called by it all the same: 7, maj7 and 9 over root and fifth.</summary>
    public bool FitsWithoutThird(ReadOnlySpan<Pitch> pitches) => TryHear(pitches, out ToneSet tones) && _fit.FitsWithoutThird(tones, _bassAboveRoot);

    // The tones from the root, if the bass is the symbol's.
    private bool TryHear(ReadOnlySpan<Pitch> pitches, out ToneSet tones)
    {
        var heard = HeardTones.Of(pitches);
        tones = heard.FromBass.From(_rootAboveBass);
        return heard.FromBass.Count >= 2 && heard.Bass == _bass;
    }
}
