using System.Collections.Immutable;

namespace Clampwise.Theory;

/// <summary>
/// What a set of sounding pitches is and how it reads: all sensible names, the one a guitarist would write first. The first reading of
/// many sets, without the rest, is quicker by <see cref="FirstReading.Of"/>.
/// </summary>
public sealed class Sonority
{
    private readonly Lazy<ImmutableArray<Reading>> _readings;

    private Sonority(ImmutableArray<Pitch> pitches)
    {
        Pitches = pitches;
        First = FirstReading.Of(pitches.AsSpan());
        _readings = new Lazy<ImmutableArray<Reading>>(() => ReadingOrder.Readings(pitches.AsSpan()));
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
    public static Sonority Read(ReadOnlySpan<Pitch> pitches) => new([.. pitches]);

    /// <summary>Judges a chord symbol as an answer to what these pitches are called.</summary>
    public Acceptance Accepts(ChordSymbol symbol) => Acceptance.Of(this, symbol);

    /// <inheritdoc/>
    public override string ToString() => Name;
}
