namespace Clampwise.Theory.Tests;

/// <summary>Answers that name what sounds in another right way are accepted, and what is other about them is said.</summary>
public class AcceptanceTests
{
    [Theory]
    [InlineData("A2 E3 G3 C4 E4", "Am7", AcceptanceKind.FirstReading, false)]
    [InlineData("A2 E3 G3 C4 E4", "A-7", AcceptanceKind.FirstReading, false)]
    [InlineData("A2 E3 G3 C4 E4", "C6/A", AcceptanceKind.AnotherReading, false)]
    [InlineData("A2 E3 G3 C4 E4", "C6", AcceptanceKind.OtherBass, false)]
    [InlineData("A2 E3 G3 C4 E4", "Am", AcceptanceKind.Wrong, false)]
    [InlineData("A2 E3 G3 C4 E4", "A7", AcceptanceKind.Wrong, false)]
    [InlineData("C#3 G#3 B3 E4", "Dbm7", AcceptanceKind.FirstReading, true)]
    [InlineData("F#2 C#3 F#3 A#3 C#4 F#4", "Gb", AcceptanceKind.FirstReading, true)]
    [InlineData("C3 E3 Bb3", "C7", AcceptanceKind.FirstReading, false)]
    [InlineData("C3 E3 Bb3", "C7(no5)", AcceptanceKind.Fitting, false)]
    [InlineData("C3 E3", "C", AcceptanceKind.FirstReading, false)]
    [InlineData("C3 E3", "C(no5)", AcceptanceKind.Fitting, false)]
    [InlineData("A2 E3 G3 C4 D4", "Am7(add11)", AcceptanceKind.Fitting, false)]
    [InlineData("E2 D3 F#3 A3", "D/E", AcceptanceKind.FirstReading, false)]
    [InlineData("E2 D3 F#3 A3", "E9sus4", AcceptanceKind.AnotherReading, false)]
    [InlineData("E2 D3 F#3 A3", "D", AcceptanceKind.OtherBass, false)]
    [InlineData("E2 B2 E3", "E5", AcceptanceKind.FirstReading, false)]
    [InlineData("E2 B2 E3", "E", AcceptanceKind.Wrong, false)]
    [InlineData("E2 E3", "E5", AcceptanceKind.Wrong, false)]
    // Names with some tones of a plain chord and something missing besides: wrong, and not right but for the bass.
    [InlineData("D3 A3 D4 F#4", "A6sus4", AcceptanceKind.Wrong, false)]
    [InlineData("D3 A3 D4 F#4", "A6sus4/D", AcceptanceKind.Wrong, false)]
    [InlineData("F#2 A2 D3 A3 D4 F#4", "A6sus4/F#", AcceptanceKind.Wrong, false)]
    [InlineData("F#2 A2 D3 A3 D4 F#4", "D5/F#", AcceptanceKind.Wrong, false)]
    [InlineData("F#2 A2 D3 A3 D4 F#4", "D", AcceptanceKind.OtherBass, false)]
    [InlineData("A2 E3 A3 C4 E4", "C6", AcceptanceKind.Wrong, false)]
    [InlineData("A2 E3 A3 C4 E4", "C6/A", AcceptanceKind.Wrong, false)]
    [InlineData("A2 E3 A3 C4 E4", "C/A", AcceptanceKind.Wrong, false)]
    [InlineData("E2 B2 E3 G3 B3 E4", "G6/E", AcceptanceKind.Wrong, false)]
    [InlineData("C3 E3 A3", "C6", AcceptanceKind.AnotherReading, false)]
    [InlineData("A2 F#3 C#4 E4", "F#7(no3)/A", AcceptanceKind.Wrong, false)]
    [InlineData("E2 A2 B2", "B11/E", AcceptanceKind.Wrong, false)]
    [InlineData("A2 C3 F#3", "Am6", AcceptanceKind.Wrong, false)]
    [InlineData("A2 C3 Eb3 G3", "Am7#11", AcceptanceKind.Wrong, false)]
    [InlineData("A2 E3 G3 C4 E4", "C", AcceptanceKind.Wrong, false)]
    [InlineData("F#2 A2 C3 E3", "Am", AcceptanceKind.Wrong, false)]
    // Lessons use the plain name where the third is away; the triad, the minor seventh and what lacks more are not called so.
    [InlineData("D3 A3 C4 D4", "D7(no3)", AcceptanceKind.FirstReading, false)]
    [InlineData("D3 A3 C4 D4", "D7", AcceptanceKind.WithoutThird, false)]
    [InlineData("D3 A3 C#4 D4", "Dmaj7", AcceptanceKind.WithoutThird, false)]
    [InlineData("D2 A2 C3 E3 A3 D4", "D9", AcceptanceKind.WithoutThird, false)]
    [InlineData("D2 A2 C3 E3 G3", "D11", AcceptanceKind.AnotherReading, false)]
    [InlineData("C#3 G#3 B3", "C#7", AcceptanceKind.WithoutThird, true)]
    [InlineData("D3 A3 C4 D4", "Dm7", AcceptanceKind.Wrong, false)]
    [InlineData("D3 A3 C4 D4", "D9", AcceptanceKind.Wrong, false)]
    [InlineData("D3 A3 C4 G4", "D7", AcceptanceKind.Wrong, false)]
    [InlineData("D3 C4", "D7", AcceptanceKind.Wrong, false)]
    [InlineData("A2 D3 C4", "D7", AcceptanceKind.Wrong, false)]
    // Altered means fifth and ninth.
    [InlineData("C3 E3 Bb3", "C7alt", AcceptanceKind.Wrong, false)]
    [InlineData("C3 E3 Bb3 Db4", "C7alt", AcceptanceKind.Wrong, false)]
    [InlineData("C3 E3 G#3 Bb3 Db4", "C7alt", AcceptanceKind.Fitting, false)]
    public void Judges(string pitches, string answer, AcceptanceKind kind, bool isOtherSpelling)
    {
        var sonority = Sonority.Read([.. pitches.Split(' ').Select(text => Pitch.Parse(text).Value)]);
        Acceptance judged = sonority.Accepts(ChordSymbol.Parse(answer).Value);
        Assert.Equal((kind, isOtherSpelling), (judged.Kind, judged.IsOtherSpelling));
        Assert.Equal(kind >= AcceptanceKind.WithoutThird, judged.IsAccepted);
        Assert.Equal(kind >= AcceptanceKind.AnotherReading, judged.Reading is not null);
    }
}
