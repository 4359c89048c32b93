namespace Clampwise.Theory;

/// <summary>
/// A pitch of equal temperament without a spelling, held as its MIDI note number: 0 to 127, where 60 is C4 and 69 is A4
/// (MIDI 1.0 Detailed Specification; octave numbers by scientific pitch notation). The default is C-1.
/// </summary>
public readonly record struct Pitch : IComparable<Pitch>
{
    /// <summary>The highest MIDI note number.</summary>
    public const int HighestMidi = 127;

    /// <summary>A4 in hertz (ISO 16).</summary>
    public const double StandardA4Hertz = 440.0;

    private const int MidiOfA4 = 69;
    private readonly byte _midi;

    private Pitch(int midi) => _midi = (byte)midi;

    /// <summary>MIDI note number, 0 to 127.</summary>
    public int Midi => _midi;

    /// <summary>The pitch class.</summary>
    public PitchClass Class => PitchClass.Of(_midi);

    /// <summary>The octave of scientific pitch notation when spelled with a natural or a sharp: -1 to 9.</summary>
    public int Octave => (_midi / PitchClass.Count) - 1;

    /// <summary>A pitch from a MIDI note number. Throws outside 0 to 127.</summary>
    public static Pitch FromMidi(int midi) => midi is >= 0 and <= HighestMidi
        ? new Pitch(midi)
        : throw new ArgumentOutOfRangeException(nameof(midi), midi, TheoryWords.MidiOutOfRange);

    /// <summary>True if a pitch so many semitones away still has a MIDI note number.</summary>
    public bool CanMove(int semitones) => _midi + semitones is >= 0 and <= HighestMidi;

    /// <summary>Frequency in hertz in equal temperament: a4 * 2^((midi - 69) / 12).</summary>
    /// <param name="a4Hertz">The frequency of A4; 440 by ISO 16.</param>
    public double Hertz(double a4Hertz = StandardA4Hertz) => a4Hertz * Math.Pow(2.0, (_midi - MidiOfA4) / 12.0);

    /// <summary>The pitch so many semitones up. Throws outside MIDI 0 to 127.</summary>
    public static Pitch operator +(Pitch pitch, int semitones) => FromMidi(pitch._midi + semitones);

    /// <summary>The pitch so many semitones down. Throws outside MIDI 0 to 127.</summary>
    public static Pitch operator -(Pitch pitch, int semitones) => FromMidi(pitch._midi - semitones);

    /// <summary>Semitones from the second pitch up to the first.</summary>
    public static int operator -(Pitch upper, Pitch lower) => upper._midi - lower._midi;

    public static bool operator <(Pitch left, Pitch right) => left._midi < right._midi;

    public static bool operator >(Pitch left, Pitch right) => left._midi > right._midi;

    public static bool operator <=(Pitch left, Pitch right) => left._midi <= right._midi;

    public static bool operator >=(Pitch left, Pitch right) => left._midi >= right._midi;

    /// <inheritdoc/>
    public int CompareTo(Pitch other) => _midi.CompareTo(other._midi);

    /// <summary>Reads scientific pitch notation, any spelling.</summary>
    public static Result<Pitch> Parse(string text) => SpelledPitch.Parse(text).Select(spelled => spelled.Pitch);

    /// <summary>Scientific pitch notation in the usual spelling, such as F#3 or Bb2.</summary>
    public override string ToString() => SpelledPitch.Usual(this).ToString();
}
