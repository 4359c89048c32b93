using System.Numerics;

namespace Clampwise.Theory;

/// <summary>Which of the twelve semitones above some note sound, that note included or not, as one number of twelve bits.</summary>
internal readonly record struct ToneSet(int Bits)
{
    public const int All = (1 << PitchClass.Count) - 1;

    public int Count => BitOperations.PopCount((uint)Bits);

    public bool Has(int semitones) => (Bits & (1 << semitones)) != 0;

    public ToneSet With(int semitones) => new(Bits | (1 << semitones));

    public ToneSet Without(int semitones) => new(Bits & ~(1 << semitones));

    /// <summary>The same notes counted from the one that lies so many semitones above.</summary>
    public ToneSet From(int semitones) => new(((Bits >> semitones) | (Bits << (PitchClass.Count - semitones))) & All);

    public bool IsWithin(ToneSet other) => (Bits & ~other.Bits) == 0;

    public static ToneSet operator |(ToneSet left, ToneSet right) => new(left.Bits | right.Bits);
}
