using Clampwise.Theory;

namespace Clampwise.Fretboard.Tests;

public class VoicingWordsTests
{
    [Fact]
    public void One_line_a_string() => Assert.Equal(
    [
        "string 6 free, rings, E2, the root",
        "string 5 held by the clamp at fret 2, rings, B2, the fifth",
        "string 4 held by the clamp at fret 2, rings, E3, the root",
        "string 3 held by the clamp at fret 2, finger at fret 4, B3, the fifth",
        "string 2 muted",
        "string 1 free, rings, E4, the root",
    ], VoicingWords.Lines(Voicing.Parse(Setup.Parse("3-5@2").Value, "0004x0").Value));

    [Theory]
    [InlineData("200000", 0, "string 6 free, finger at fret 2 beside the clamp, F#2")]
    [InlineData("000001", 5, "string 1 free, finger at fret 1 behind the clamp at fret 2, F4")]
    public void A_finger_beside_or_behind_the_clamp_is_said(string fretting, int index, string start)
    {
        Voicing voicing = Voicing.Parse(Setup.Parse("3-5@2").Value, fretting, allowBehindClamp: true).Value;
        Assert.StartsWith(start, VoicingWords.Lines(voicing).ElementAt(index), StringComparison.Ordinal);
    }


    [Fact]
    public void Notes_are_spelled_by_the_reading_and_fingers_are_named()
    {
        Voicing voicing = Voicing.Parse(Setup.Parse("standard").Value, "x35343").Value;
        Assert.Equal(
        [
            "string 6 muted",
            "string 5 free, finger 1 at fret 3, C3, the root",
            "string 4 free, finger 3 at fret 5, G3, the fifth",
            "string 3 free, finger 1 at fret 3, Bb3, the flat seventh",
            "string 2 free, finger 2 at fret 4, Eb4, the minor third",
            "string 1 free, finger 1 at fret 3, G4, the fifth",
        ], VoicingWords.Lines(voicing, Fingering.Of(voicing).Value));
    }

    [Theory]
    [InlineData(1, 0, "the root")]
    [InlineData(3, 0, "the third")]
    [InlineData(5, -1, "the flat fifth")]
    [InlineData(7, 0, "the major seventh")]
    [InlineData(7, -2, "the diminished seventh")]
    [InlineData(9, 1, "the sharp ninth")]
    [InlineData(13, 0, "the thirteenth")]
    public void Degrees(int number, int alteration, string words) =>
        Assert.Equal(words, VoicingWords.Say(ChordDegree.Of(number, alteration)));

    [Fact]
    public void Every_string_of_every_voicing_has_its_line() => Gens.Voicings.Holds(voicing =>
    {
        string[] lines = [.. VoicingWords.Lines(voicing)];
        Assert.Equal(voicing.Setup.StringCount, lines.Length);
        Assert.All(voicing.Strings.Zip(lines), pair =>
            Assert.Equal(pair.First.Pitch is null, pair.Second.EndsWith("muted", StringComparison.Ordinal)));
    });
}
