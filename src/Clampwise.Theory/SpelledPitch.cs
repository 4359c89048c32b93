namespace Clampwise.Theory;

/// <summary>
/// A pitch with its spelling, in scientific pitch notation: the octave number belongs to the letter, so B#3 sounds as C4.
/// Adding an interval is addition of line-of-fifths positions and octaves, so (p + i) - i is p with its spelling.
/// </summary>
/// <param name="Name">Letter and accidentals.</param>
/// <param name="Octave">Octave number of the letter; octave 4 starts at middle C.</param>
public readonly record struct SpelledPitch(NoteName Name, int Octave)
{
    /// <summary>The MIDI note number that it would have; outside 0 to 127 there is no <see cref="Pitch"/>.</summary>
    public int Midi => ((Octave + 1) * 12) + Name.NaturalSemitones + Name.Accidentals;

    /// <summary>The pitch. Throws outside MIDI 0 to 127.</summary>
    public Pitch Pitch => Pitch.FromMidi(Midi);

    /// <summary>The usual spelling of a pitch away from any key.</summary>
    public static SpelledPitch Usual(Pitch pitch) => Of(pitch, NoteName.Usual(pitch.Class));

    /// <summary>A pitch spelled with a given name. Throws if the name is of another pitch class.</summary>
    public static SpelledPitch Of(Pitch pitch, NoteName name)
    {
        if (name.Class != pitch.Class)
        {
            throw new ArgumentException($"{name} does not name MIDI note {pitch.Midi}.", nameof(name));
        }

        return new SpelledPitch(name, ((pitch.Midi - name.NaturalSemitones - name.Accidentals) / 12) - 1);
    }

    /// <summary>The pitch an interval above.</summary>
    public static SpelledPitch operator +(SpelledPitch pitch, Interval interval)
    {
        NoteName name = pitch.Name + interval;
        int steps = pitch.Name.Step + interval.Steps;
        return new SpelledPitch(name, pitch.Octave + NoteName.FloorDiv(steps, 7));
    }

    /// <summary>The pitch an interval below.</summary>
    public static SpelledPitch operator -(SpelledPitch pitch, Interval interval)
    {
        NoteName name = pitch.Name - interval;
        int steps = pitch.Name.Step - interval.Steps;
        return new SpelledPitch(name, pitch.Octave + NoteName.FloorDiv(steps, 7));
    }

    /// <summary>Reads scientific pitch notation, such as E2, F#3, B♭1 or C-1.</summary>
    public static Result<SpelledPitch> Parse(string text)
    {
        if (!NoteName.ParseStart(text, 0).TryGet(out var part, out Fault? fault))
        {
            return fault;
        }

        string octave = text[part.Length..];
        bool isNumber = int.TryParse(octave, System.Globalization.NumberStyles.AllowLeadingSign, null, out int number);
        if (!isNumber || octave.Length > 2)
        {
            return TheoryWords.ExpectedOctave(text, part.Length);
        }

        var pitch = new SpelledPitch(part.Name, number);
        return pitch.Midi is >= 0 and <= Theory.Pitch.HighestMidi ? pitch : TheoryWords.PitchOutOfRange(text);
    }

    /// <summary>Scientific pitch notation with typed accidentals.</summary>
    public override string ToString() => $"{Name}{Octave}";
}
