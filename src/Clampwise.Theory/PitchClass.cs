namespace Clampwise.Theory;

/// <summary>One of the twelve pitch classes of equal temperament, whatever its spelling or octave. C is 0 and the default.</summary>
public readonly record struct PitchClass
{
    /// <summary>How many there are.</summary>
    public const int Count = 12;

    private readonly byte _number;

    private PitchClass(int number) => _number = (byte)number;

    /// <summary>0 (C) to 11 (B).</summary>
    public int Number => _number;

    /// <summary>The pitch class of any chromatic number; multiples of twelve fall away.</summary>
    public static PitchClass Of(int number) => new(((number % Count) + Count) % Count);

    /// <summary>The pitch class so many semitones up, or down if negative.</summary>
    public static PitchClass operator +(PitchClass pitchClass, int semitones) => Of(pitchClass._number + semitones);

    /// <summary>Semitones upward from one pitch class to the next one of another: 0 to 11.</summary>
    public static int SemitonesUp(PitchClass from, PitchClass to) => Of(to._number - from._number)._number;

    /// <inheritdoc/>
    public override string ToString() => NoteName.Usual(this).ToString();
}
