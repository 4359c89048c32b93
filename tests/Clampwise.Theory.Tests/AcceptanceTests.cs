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
    public void Judges(string pitches, string answer, AcceptanceKind kind, bool isOtherSpelling)
    {
        var sonority = Sonority.Read([.. pitches.Split(' ').Select(text => Pitch.Parse(text).Value)]);
        Acceptance judged = sonority.Accepts(ChordSymbol.Parse(answer).Value);
        Assert.Equal((kind, isOtherSpelling), (judged.Kind, judged.IsOtherSpelling));
        Assert.Equal(kind >= AcceptanceKind.Fitting, judged.IsAccepted);
        Assert.Equal(kind >= AcceptanceKind.AnotherReading, judged.Reading is not null);
    }
}
