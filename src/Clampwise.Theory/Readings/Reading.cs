using System.Collections.Immutable;

namespace Clampwise.Theory;

/// <summary>One way to name a set of sounding pitches.</summary>
public sealed class Reading
{
    internal Reading(ChordSymbol symbol, ReadOnlySpan<Pitch> pitches)
    {
        Symbol = symbol;
        var tones = ImmutableArray.CreateBuilder<SoundingTone>(pitches.Length);
        foreach (Pitch pitch in pitches)
        {
            tones.Add(Tone(symbol, pitch));
        }

        Tones = tones.MoveToImmutable();
        var counts = Tones.CountBy(tone => tone.Degree).ToDictionary();
        Doubled = DegreeSet.Of([.. counts.Where(pair => pair.Value > 1).Select(pair => pair.Key)]);
        Omitted = DegreeSet.Of([.. symbol.Quality.Tones.Where(degree => !counts.ContainsKey(degree))]);
    }

    /// <summary>The name.</summary>
    public ChordSymbol Symbol { get; }

    /// <summary>Every sounding pitch in the order given, with its degree and spelling.</summary>
    public ImmutableArray<SoundingTone> Tones { get; }

    /// <summary>Tones that the name implies and that don't sound.</summary>
    public DegreeSet Omitted { get; }

    /// <summary>Tones that sound more than once, in any octave.</summary>
    public DegreeSet Doubled { get; }

    /// <summary>True if the bass is no tone of the chord above it.</summary>
    public bool IsBassForeign => Symbol.Tones.All(tone => tone.Note.Class != Symbol.BassClass);

    /// <inheritdoc/>
    public override string ToString() => Symbol.ToString();

    private static SoundingTone Tone(ChordSymbol symbol, Pitch pitch)
    {
        ChordDegree degree = ChordSpelling.Degree(symbol.Quality, PitchClass.SemitonesUp(symbol.Root.Class, pitch.Class));
        return symbol.Bass is { } bass && bass.Class == pitch.Class && !symbol.Quality.Tones.Contains(degree)
            ? new SoundingTone(pitch, ChordSpelling.ForeignDegree(symbol.Root, bass), SpelledPitch.Of(pitch, bass))
            : new SoundingTone(pitch, degree, SpelledPitch.Of(pitch, symbol.Root + degree.Interval));
    }
}
