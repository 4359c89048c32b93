using CsCheck;

namespace Clampwise.Fretboard.Tests;

/// <summary>
/// Against counts that two independent programs agree on (frets up to 14, at most four fingers), and against a plain enumeration of
/// small spaces that shares nothing with the walk but the setup.
/// </summary>
public class FrettingCounterTests
{
    // Columns: in span; one barre; any barre; one barre and 3 or more strings; the same with no muted string between sounding ones.
    [Theory]
    [InlineData("standard", 4, 356_965, 266_509, 321_237, 264_694, 122_774)]
    [InlineData("standard + full@2", 4, 294_903, 220_593, 265_611, 219_060, 101_516)]
    [InlineData("standard + 3-5@2", 4, 312_102, 233_131, 281_583, 231_475, 105_827)]
    [InlineData("standard + 1-5@2", 4, 299_052, 223_497, 269_509, 221_927, 102_379)]
    [InlineData("standard + full@2 + 3-5@4", 4, 250_040, 187_215, 225_957, 185_841, 84_569)]
    [InlineData("standard", 5, 756_585, 480_619, 611_317, 478_504, 228_544)]
    [InlineData("standard + 3-5@2", 5, 657_906, 418_069, 533_823, 416_143, 195_708)]
    public void Published_counts(string text, int span, long inSpan, long oneBarre, long anyBarre, long threeStrings, long unbroken)
    {
        Setup setup = Setup.Parse(text).Value;
        var counter = new FrettingCounter { Space = FrettingSpace.Create(14, span).Value };
        Assert.Equal(inSpan, (counter with { Fingers = 6 }).Count(setup));
        Assert.Equal(oneBarre, counter.Count(setup));
        Assert.Equal(anyBarre, (counter with { Barres = BarreRule.Any }).Count(setup));
        Assert.Equal(threeStrings, (counter with { MinStrings = 3 }).Count(setup));
        Assert.Equal(unbroken, (counter with { MinStrings = 3, Unbroken = true }).Count(setup));
    }

    [Theory]
    [InlineData("standard", 2, 14)]
    [InlineData("DADGAD", 5, 17)]
    public void A_full_capo_gives_the_counts_of_the_frets_above_it(string tuning, int fret, int maxFret)
    {
        Setup above = Setup.Parse($"{tuning} + full@{fret}").Value;
        var counter = new FrettingCounter { Space = FrettingSpace.Create(maxFret, 4).Value, MinStrings = 2 };
        Assert.Equal((counter with { Space = FrettingSpace.Create(maxFret - fret, 4).Value }).Count(above.Rig), counter.Count(above));
    }

    [Fact]
    public void A_plain_enumeration_counts_the_same() =>
        Gen.Select(Gens.Setups.Where(setup => setup.StringCount <= 5), Gen.Int[1, 7], Gen.Int[1, 5], Gen.Int[0, 5], Gen.Int[0, 3], Gen.Bool)
            .Holds((setup, maxFret, span, fingers, minStrings, flag) =>
            {
                var counter = new FrettingCounter
                {
                    Space = FrettingSpace.Create(maxFret, span).Value,
                    Fingers = fingers,
                    MinStrings = minStrings,
                    Barres = flag ? BarreRule.One : BarreRule.Any,
                    Unbroken = flag,
                };
                int expected = NaiveSpace.Frettings(setup, counter.Space).Count(fretting => NaiveSpace.Passes(setup, fretting, counter));
                Assert.Equal(expected, counter.Count(setup));
            }, count: 60);

    [Theory]
    [InlineData(0, 4, "the highest fret is 0: give 1 to 24")]
    [InlineData(25, 4, "the highest fret is 25: give 1 to 24")]
    [InlineData(14, 0, "the span is 0 frets: give 1 to 8")]
    [InlineData(14, 9, "the span is 9 frets: give 1 to 8")]
    public void Spaces_refuse(int maxFret, int span, string words) =>
        Assert.Equal(words, FrettingSpace.Create(maxFret, span).Fault.Message);
}
