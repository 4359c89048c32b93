namespace Clampwise.Theory.Tests;

public class SpelledPitchTests
{
    // Scientific pitch notation; MIDI numbers by the MIDI 1.0 specification (A4 = 69).
    [Theory]
    [InlineData("A4", 69)]
    [InlineData("C4", 60)]
    [InlineData("B#3", 60)]
    [InlineData("Cb4", 59)]
    [InlineData("E2", 40)]
    [InlineData("F♯3", 54)]
    [InlineData("B♭1", 34)]
    [InlineData("C-1", 0)]
    [InlineData("G9", 127)]
    public void Reads(string text, int midi) => Assert.Equal(midi, SpelledPitch.Parse(text).Value.Midi);

    [Theory]
    [InlineData("h4", "column 1: expected a note letter A to G in upper case, found 'h4'")]
    [InlineData("A", "column 2: expected an octave number after the note, as in E2, found the end of the text")]
    [InlineData("A#b3", "column 3: expected at most three accidentals of one kind, such as F# or Bb")]
    [InlineData("G#9", "column 1: G#9 lies outside the range C-1 to G9")]
    public void Refuses(string text, string words) => Assert.Equal(words, SpelledPitch.Parse(text).Fault.ToString());

    [Fact]
    public void Every_pitch_prints_and_reads_back()
    {
        for (int midi = 0; midi <= Pitch.HighestMidi; midi++)
        {
            Assert.Equal(midi, Pitch.Parse(Pitch.FromMidi(midi).ToString()).Value.Midi);
        }
    }

    // ISO 16 and the standard frequency table of the open strings.
    [Theory]
    [InlineData("E2", 82.41)]
    [InlineData("A2", 110.00)]
    [InlineData("D3", 146.83)]
    [InlineData("G3", 196.00)]
    [InlineData("B3", 246.94)]
    [InlineData("E4", 329.63)]
    public void Frequencies(string text, double hertz) => Assert.Equal(hertz, Pitch.Parse(text).Value.Hertz(), 2);
}
