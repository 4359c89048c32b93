namespace Clampwise.Theory.Tests;

/// <summary>Roots take the spelling with fewer accidentals in their key: the usual circle of fifths with its fifteen signatures.</summary>
public class ChordSpellingTests
{
    [Theory]
    [InlineData("", "C Db D Eb E F F# G Ab A Bb B")]
    [InlineData("7sus4", "C Db D Eb E F F# G Ab A Bb B")]
    [InlineData("m", "C C# D Eb E F F# G G# A Bb B")]
    [InlineData("m7b5", "C C# D Eb E F F# G G# A Bb B")]
    public void Roots(string quality, string roots)
    {
        var symbol = new ChordSymbol(NoteName.Usual(PitchClass.Of(0)), ChordQuality.Parse(quality).Value);
        Assert.Equal(roots, string.Join(' ', Enumerable.Range(0, 12).Select(n => symbol.TransposedBy(n).Root)));
    }

    [Theory]
    [InlineData("C", 1, "Db")]
    [InlineData("Cm", 1, "C#m")]
    [InlineData("C/E", 6, "F#/A#")]
    [InlineData("D/F#", -2, "C/E")]
    [InlineData("D/E", 2, "E/F#")]
    [InlineData("Am/G", 3, "Cm/Bb")]
    [InlineData("E/C", 1, "F/Db")]
    [InlineData("Gbm7", 12, "Gbm7")]
    [InlineData("Cdim7/A", 3, "Ebdim7/C")]
    public void Transposes(string from, int semitones, string to) =>
        Assert.Equal(to, ChordSymbol.Parse(from).Value.TransposedBy(semitones).ToString());

    [Fact]
    public void No_house_spelling_needs_a_double_accidental()
    {
        ChordSymbol[] symbols = [.. Enumerable.Range(0, 12).SelectMany(root => Enumerable.Range(0, 12).SelectMany(bass => new[] { "", "m", "dim7", "7b9", "m(maj7)" }
            .Select(quality => ChordSymbol.Of(PitchClass.Of(root), ChordQuality.Parse(quality).Value, PitchClass.Of(bass)))))];
        Assert.All(symbols, symbol => Assert.InRange(Math.Abs(symbol.Root.Accidentals), 0, 1));
        Assert.All(symbols, symbol => Assert.InRange(Math.Abs((symbol.Bass ?? symbol.Root).Accidentals), 0, 1));
    }
}
