using System.Collections.Immutable;

namespace Clampwise.Theory;

/// <summary>
/// What a set of sounding pitches is and how it reads: all sensible names, the one a guitarist would write first. The first reading of
/// many sets, without the rest, is quicker by <see cref="FirstReading.Of"/>.
/// </summary>
public sealed class Sonority
{
    private readonly Lazy<ImmutableArray<Reading>> _readings;

    private Sonority(ImmutableArray<Pitch> pitches, MusicalKey? key)
    {
        Pitches = pitches;
        First = FirstReading.Of(pitches.AsSpan(), key);
        _readings = new Lazy<ImmutableArray<Reading>>(() => ReadingOrder.Readings(pitches.AsSpan(), key));
    }

    /// <summary>The sounding pitches in the order given.</summary>
    public ImmutableArray<Pitch> Pitches { get; }

    /// <summary>The first reading in short.</summary>
    public FirstReading First { get; }

    /// <summary>What sort of thing sounds.</summary>
    public SonorityKind Kind => First.Kind;

    /// <summary>The lowest pitch; none in silence.</summary>
    public Pitch? Bass => Pitches.IsEmpty ? null : Pitches.Min();

    /// <summary>All sensible names, best first; none for silence, a lone note, octaves and clusters.</summary>
    public ImmutableArray<Reading> Readings => _readings.Value;

    /// <summary>The first reading's symbol, or in a few words what sounds if no symbol says it.</summary>
    public string Name => SonorityText.Name(this);

    /// <summary>Reads sounding pitches, lowest string first; they need not rise.</summary>
    /// <param name="pitches">The pitches.</param>
    /// <param name="key">The key that names are spelled in, and that speaks for names whose root it holds; none if null.</param>
    public static Sonority Read(ReadOnlySpan<Pitch> pitches, MusicalKey? key = null) => new([.. pitches], key);

    /// <summary>A pitch class as it is spelled where no reading says it: as the key writes it, else as it is mostly seen.</summary>
    public NoteName Spell(PitchClass pitchClass) => First.Key?.Write(pitchClass) ?? NoteName.Usual(pitchClass);

    /// <summary>Judges a chord symbol as an answer to what these pitches are called.</summary>
    public Acceptance Accepts(ChordSymbol symbol) => Acceptance.Of(this, symbol);

    /// <inheritdoc/>
    public override string ToString() => Name;
}
