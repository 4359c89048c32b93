namespace Clampwise.Theory;

/// <summary>The wording of every fault that this layer reports.</summary>
internal static class TheoryWords
{
    public const string MidiOutOfRange = "MIDI note numbers run from 0 to 127.";
    public const string FifthsOutOfRange = "Note names run from Fbbb to B###.";

    public static Fault ExpectedLetter(string text, int start) =>
        new($"expected a note letter A to G in upper case, found {Found(text, start)}", start + 1);

    public static Fault TooManyAccidentals(int at) =>
        new("expected at most three accidentals of one kind, such as F# or Bb", at + 1);

    public static Fault ExpectedOctave(string text, int start) =>
        new($"expected an octave number after the note, as in E2, found {Found(text, start)}", start + 1);

    public static Fault PitchOutOfRange(string text) =>
        new($"{text} lies outside the range C-1 to G9", 1);

    public static Fault NothingMore(string text, int start) =>
        new($"expected the text to end here, found {Found(text, start)}", start + 1);

    public static Fault ExpectedChord(int start) =>
        new("expected a chord symbol, such as C, F#m7 or D/F#, found the end of the text", start + 1);

    public static Fault ExpectedQuality(string text, int start) =>
        new($"expected m, maj7, 7, sus4, add9, no3, (b5) or another part of a chord symbol, or a slash and a bass note, found {Found(text, start)}", start + 1);

    public static Fault ExpectedClosing(int opened) =>
        new("expected a closing parenthesis for the one opened here", opened + 1);

    public static Fault ExpectedAddedTone(string text, int start) =>
        new($"expected an added tone after add: 2, 4, 6, 9, 11 or 13, b6, b9 or b13, #9 or #11, found {Found(text, start)}", start + 1);

    public static Fault ExpectedOmittedTone(string text, int start) =>
        new($"expected a tone to leave out: 3, 5, 9 or 11, found {Found(text, start)}", start + 1);

    public static Fault ExpectedAlteredTone(string text, int start, int accidental) =>
        new($"expected {(accidental > 0 ? "#5, #9 or #11" : "b5, b6, b9 or b13")}, found {Found(text, start)}", start + 1);

    public static Fault ExpectedSeventh(string text, int start) =>
        new($"expected 7, 9, 11 or 13 after maj, found {Found(text, start)}", start + 1);

    public static Fault SecondSeventh(int start) =>
        new("expected no second seventh: the chord has one already", start + 1);

    public static Fault SuspendedDiminished(int start) =>
        new("expected no sus after dim: a diminished chord needs its third", start + 1);

    public static Fault AltNeedsDominant(int start) =>
        new("expected alt after a root or a 7 alone, as in G7alt", start + 1);

    public static Fault NoChordOfKind(string kind) => kind switch
    {
        "Neapolitan" or "Italian" or "French" or "German" =>
            new($"kind {kind} names a function in a key, not tones above a root: expected a kind that does, such as major or dominant"),
        "Tristan" => new("kind Tristan has no third and no fifth above its root: expected the half-diminished chord that it sounds like"),
        "pedal" or "other" or "none" => new($"kind {kind} names no chord: expected a kind that does, such as major or dominant"),
        _ => new($"'{kind}' is no kind of MusicXML 4.0: expected one such as major, minor-seventh or suspended-fourth"),
    };

    public static Fault CannotChangeDegree(MusicXmlDegree degree, ChordQuality quality) =>
        new($"degree {degree.Value} with alteration {degree.Alter} cannot be changed so in a chord of {string.Join(' ', quality.Tones)}: expected a tone to "
            + "add (2, 4, 6, 7, 9, 11, 13), or one that the chord holds to alter or subtract");

    public static Fault DiminishedSeventhAlone =>
        new("a diminished seventh needs a diminished fifth beneath it: expected degree 5 to be altered by -1 too");

    public static Fault NoSuchKey(string key) =>
        new($"{key} has no signature of at most seven sharps or flats: give the key that sounds the same, such as Ab for G#", 1);

    public static Fault ExpectedKey(string text, int start) =>
        new($"expected nothing or m after the tonic of a key, as in F# or C#m, found {Found(text, start)}", start + 1);

    public static Fault SampleRateOutOfRange(int hertz) =>
        new($"a sample rate of {hertz} Hz is out of range: use {SampleRate.LowestHertz} to {SampleRate.HighestHertz}, such as 44100 or 48000");

    public static Fault ConcertPitchOutOfRange(double hertz) =>
        new($"A4 at {hertz:0.##} Hz is out of range: use {ConcertPitch.LowestHertz:0} to {ConcertPitch.HighestHertz:0} Hz, usually 440");

    public static Fault TempoOutOfRange(double found) => new($"a tempo of {found:0.#} is out of range: use 20 to 300 beats a minute");

    internal static string Found(string text, int start) => start >= text.Length ? "the end of the text" : $"'{text[start..]}'";
}
