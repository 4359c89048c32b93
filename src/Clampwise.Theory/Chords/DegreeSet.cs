using System.Collections;
using System.Numerics;

namespace Clampwise.Theory;

/// <summary>A set of chord degrees in rising order, as one number. The default is empty.</summary>
public readonly record struct DegreeSet : IEnumerable<ChordDegree>
{
    private readonly ulong _bits;

    private DegreeSet(ulong bits) => _bits = bits;

    /// <summary>How many degrees it holds.</summary>
    public int Count => BitOperations.PopCount(_bits);

    /// <summary>True if it holds none.</summary>
    public bool IsEmpty => _bits == 0;

    /// <summary>A set of the given degrees.</summary>
    public static DegreeSet Of(params ReadOnlySpan<ChordDegree> degrees)
    {
        DegreeSet set = default;
        foreach (ChordDegree degree in degrees)
        {
            set = set.With(degree);
        }

        return set;
    }

    /// <summary>True if the degree is in it.</summary>
    public bool Contains(ChordDegree degree) => (_bits & Bit(degree)) != 0;

    /// <summary>True if the degree of this number, however altered, is in it.</summary>
    public bool HasNumber(int number) => (_bits & BitsOf(number)) != 0;

    /// <summary>The set with one more degree.</summary>
    public DegreeSet With(ChordDegree degree) => new(_bits | Bit(degree));

    /// <summary>The set without a degree.</summary>
    public DegreeSet Without(ChordDegree degree) => new(_bits & ~Bit(degree));

    /// <summary>The set without any degree of this number.</summary>
    public DegreeSet WithoutNumber(int number) => new(_bits & ~BitsOf(number));

    public static DegreeSet operator |(DegreeSet left, DegreeSet right) => new(left._bits | right._bits);

    /// <inheritdoc/>
    public IEnumerator<ChordDegree> GetEnumerator()
    {
        for (ulong rest = _bits; rest != 0; rest &= rest - 1)
        {
            yield return ChordDegree.FromIndex(BitOperations.TrailingZeroCount(rest));
        }
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>The degrees with commas between them.</summary>
    public override string ToString() => string.Join(',', this);

    private static ulong Bit(ChordDegree degree) => 1UL << degree.Index;

    // All alterations of a number lie side by side.
    private static ulong BitsOf(int number) => 0b1111UL << ChordDegree.Of(number, ChordDegree.LowestAlteration).Index;
}
