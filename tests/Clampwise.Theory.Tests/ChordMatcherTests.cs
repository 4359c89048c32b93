namespace Clampwise.Theory.Tests;

public class ChordMatcherTests
{
    [Theory]
    [InlineData("C", "C3 E3 G3", true)]
    [InlineData("C", "C3 E3", true)]
    [InlineData("C", "C3 G3", false)]
    [InlineData("C", "E3 G3 C4", false)]
    [InlineData("C/E", "E3 G3 C4", true)]
    [InlineData("C", "C3 E3 G3 D4", false)]
    [InlineData("C13", "C3 Bb3 E4 A4", true)]
    [InlineData("D/E", "E2 D3 F#3 A3", true)]
    [InlineData("D/E", "E2 D3 F#3 A3 G4", false)]
    [InlineData("Gb", "F#2 A#3 C#4", true)]
    [InlineData("C5", "C3 G3 C4", true)]
    [InlineData("C5", "C3 C4", false)]
    public void Fits(string symbol, string pitches, bool expected) =>
        Assert.Equal(expected, new ChordMatcher(ChordSymbol.Parse(symbol).Value).Fits([.. pitches.Split(' ').Select(text => Pitch.Parse(text).Value)]));
}
