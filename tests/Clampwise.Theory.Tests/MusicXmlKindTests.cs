namespace Clampwise.Theory.Tests;

/// <summary>
/// MusicXML 4.0 (W3C Music Notation Community Group, final report of 2021), data type kind-value: all 33 values, with the tones that
/// its text gives, here as semitones above the root; and the elements degree-value, degree-alter and degree-type.
/// </summary>
public class MusicXmlKindTests
{
    [Theory]
    [InlineData("major", "C", "0 4 7")]
    [InlineData("minor", "Cm", "0 3 7")]
    [InlineData("augmented", "Caug", "0 4 8")]
    [InlineData("diminished", "Cdim", "0 3 6")]
    [InlineData("dominant", "C7", "0 4 7 10")]
    [InlineData("major-seventh", "Cmaj7", "0 4 7 11")]
    [InlineData("minor-seventh", "Cm7", "0 3 7 10")]
    [InlineData("diminished-seventh", "Cdim7", "0 3 6 9")]
    [InlineData("augmented-seventh", "C7#5", "0 4 8 10")]
    [InlineData("half-diminished", "Cm7b5", "0 3 6 10")]
    [InlineData("major-minor", "Cm(maj7)", "0 3 7 11")]
    [InlineData("major-sixth", "C6", "0 4 7 9")]
    [InlineData("minor-sixth", "Cm6", "0 3 7 9")]
    [InlineData("dominant-ninth", "C9", "0 4 7 10 14")]
    [InlineData("major-ninth", "Cmaj9", "0 4 7 11 14")]
    [InlineData("minor-ninth", "Cm9", "0 3 7 10 14")]
    [InlineData("dominant-11th", "C11", "0 4 7 10 14 17")]
    [InlineData("major-11th", "Cmaj11", "0 4 7 11 14 17")]
    [InlineData("minor-11th", "Cm11", "0 3 7 10 14 17")]
    [InlineData("dominant-13th", "C13", "0 4 7 10 14 17 21")]
    [InlineData("major-13th", "Cmaj13", "0 4 7 11 14 17 21")]
    [InlineData("minor-13th", "Cm13", "0 3 7 10 14 17 21")]
    [InlineData("suspended-second", "Csus2", "0 2 7")]
    [InlineData("suspended-fourth", "Csus4", "0 5 7")]
    [InlineData("power", "C5", "0 7")]
    public void A_kind_that_lists_tones_is_a_quality(string kind, string symbol, string semitones)
    {
        ChordQuality quality = MusicXmlKind.ToQuality(kind).Value;
        Assert.Equal(symbol, new ChordSymbol(NoteName.Usual(PitchClass.Of(0)), quality).ToString());
        Assert.Equal(semitones, string.Join(' ', quality.Tones.Select(tone => tone.Interval.Semitones)));
        Assert.Equal(kind, MusicXmlKind.Of(quality).ToString());
    }

    [Theory]
    [InlineData("Neapolitan", "kind Neapolitan names a function in a key, not tones above a root: expected a kind that does, such as major or dominant")]
    [InlineData("Italian", "kind Italian names a function in a key, not tones above a root: expected a kind that does, such as major or dominant")]
    [InlineData("French", "kind French names a function in a key, not tones above a root: expected a kind that does, such as major or dominant")]
    [InlineData("German", "kind German names a function in a key, not tones above a root: expected a kind that does, such as major or dominant")]
    [InlineData("Tristan", "kind Tristan has no third and no fifth above its root: expected the half-diminished chord that it sounds like")]
    [InlineData("pedal", "kind pedal names no chord: expected a kind that does, such as major or dominant")]
    [InlineData("other", "kind other names no chord: expected a kind that does, such as major or dominant")]
    [InlineData("none", "kind none names no chord: expected a kind that does, such as major or dominant")]
    [InlineData("jolly", "'jolly' is no kind of MusicXML 4.0: expected one such as major, minor-seventh or suspended-fourth")]
    public void A_kind_without_tones_is_refused(string kind, string words) => Assert.Equal(words, MusicXmlKind.ToQuality(kind).Fault.Message);

    [Theory]
    [InlineData("7b9", "dominant (add 9 -1)")]
    [InlineData("9b5", "dominant-ninth (alter 5 -1)")]
    [InlineData("7sus4", "suspended-fourth (add 7 0)")]
    [InlineData("maj7sus2", "suspended-second (add 7 +1)")]
    [InlineData("dim(maj7)", "major-minor (alter 5 -1)")]
    [InlineData("maj7#5", "major-seventh (alter 5 +1)")]
    [InlineData("add9", "major (add 9 0)")]
    [InlineData("m(add4)", "minor (add 4 0)")]
    [InlineData("6/9", "major-sixth (add 9 0)")]
    [InlineData("7(no3)", "dominant (subtract 3 0)")]
    [InlineData("9#11", "dominant-ninth (add 11 +1)")]
    public void Degrees(string quality, string kind) => Assert.Equal(kind, MusicXmlKind.Of(ChordQuality.Parse(quality).Value).ToString());

    [Fact]
    public void A_degree_that_the_chord_has_not_cannot_be_altered() =>
        Assert.Equal(
            "degree 9 with alteration -1 cannot be changed so in a chord of R 3 5: expected a tone to add (2, 4, 6, 7, 9, 11, 13), or one that the chord holds to alter or subtract",
            MusicXmlKind.ToQuality("major", new MusicXmlDegree(9, -1, MusicXmlDegreeType.Alter)).Fault.Message);
}
