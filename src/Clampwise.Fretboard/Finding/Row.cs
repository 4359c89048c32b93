using System.Numerics;

namespace Clampwise.Fretboard;

/// <summary>
/// Which strings of a voicing sound and where its fingers are, as bits that can be put together with "or": eight for the sounding
/// strings, eight for those that ring with no finger, one for a finger behind a clamp, and one for each fretted fret.
/// </summary>
internal readonly record struct Row(ulong Bits)
{
    private const int RingingShift = 8;
    private const int BehindShift = 16;
    private const int FretShift = 17;

    /// <summary>One bit for each sounding string, the lowest string lowest.</summary>
    public int Sounding => (byte)Bits;

    /// <summary>One bit for each string that rings with no finger.</summary>
    public int Ringing => (byte)(Bits >> RingingShift);

    public int SoundingCount => BitOperations.PopCount((uint)Sounding);

    public int RingingCount => BitOperations.PopCount((uint)Ringing);

    public bool IsBehind => ((Bits >> BehindShift) & 1) != 0;

    public bool IsUnbroken => BitOperations.IsPow2(Sounding + (Sounding & -Sounding));

    /// <summary>Frets from the lowest fretted one to the highest, both counted; 0 with no finger.</summary>
    public int Span => Frets == 0 ? 0 : BitOperations.Log2(Frets) - BitOperations.TrailingZeroCount(Frets) + 1;

    private uint Frets => (uint)(Bits >> FretShift);

    /// <summary>The row of one string that rings.</summary>
    public static Row OfRinging(int index) => new((1UL << index) | (1UL << (index + RingingShift)));

    /// <summary>The row of one string with a finger.</summary>
    public static Row OfFretted(int index, int fret, bool isBehind) =>
        new((1UL << index) | ((isBehind ? 1UL : 0UL) << BehindShift) | (1UL << (fret + FretShift)));

    /// <summary>The lowest fret with a finger; 0 with none.</summary>
    public int Lowest => Frets == 0 ? 0 : BitOperations.TrailingZeroCount(Frets);

    /// <summary>The highest fret with a finger; 0 with none.</summary>
    public int Highest => Frets == 0 ? 0 : BitOperations.Log2(Frets);

    /// <summary>These strings and others.</summary>
    public Row With(Row other) => new(Bits | other.Bits);
}
