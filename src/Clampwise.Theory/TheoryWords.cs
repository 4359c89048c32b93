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

    internal static string Found(string text, int start) => start >= text.Length ? "the end of the text" : $"'{text[start..]}'";
}
