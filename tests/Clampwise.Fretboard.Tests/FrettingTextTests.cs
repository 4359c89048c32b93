using CsCheck;

namespace Clampwise.Fretboard.Tests;

public class FrettingTextTests
{
    // Four strings keep every fretting of the whole neck within reach of one test: 26^4 of them.
    [Theory]
    [InlineData("bass")]
    [InlineData("bass + 2-3@2")]
    [InlineData("tenor + full@3* + 1@24")]
    public void Both_texts_read_back_to_the_same_fretting_over_every_fretting(string text)
    {
        Setup setup = Setup.Parse(text).Value;
        IEnumerable<StringStop> fretted = Enumerable.Range(1, Fret.Last).Select(fret => StringStop.At(Fret.Of(fret)));
        StringStop[] stops = [StringStop.Muted, StringStop.Ringing, .. fretted];
        foreach (StringStop a in stops)
        {
            foreach (StringStop b in stops)
            {
                foreach (StringStop c in stops)
                {
                    foreach (StringStop d in stops)
                    {
                        ReadsBack(Fretting.Of([a, b, c, d]), setup);
                    }
                }
            }
        }
    }

    [Fact]
    public void Both_texts_read_back_in_any_setup() => Gens.Voicings.Holds(voicing => ReadsBack(voicing.Fretting, voicing.Setup));

    [Theory]
    [InlineData("standard", "x04600", "x04600")]
    [InlineData("standard", "x 0 4 6 0 0", "x04600")]
    [InlineData("standard", " X04600 ", "x04600")]
    [InlineData("standard", "x 0 12 14 0 0", "x 0 12 14 0 0")]
    [InlineData("standard + 2-4@2", "^ x 0 2 4 0 0", "x04600")]
    [InlineData("standard + 2-4@2", "^x02400", "x04600")]
    [InlineData("standard + 3-5@2", "^ = 0 0 0 -1 =", "200012")]
    [InlineData("standard + 3-5@2", "^=000x0", "2000x0")]
    [InlineData("standard* + 3-5@2", "^ 2 0 0 0 1 2", "200012")]
    public void Reads(string setup, string text, string printed) =>
        Assert.Equal(printed, Fretting.Parse(text, Setup.Parse(setup).Value).Value.ToString());

    [Theory]
    [InlineData("x0460", "column 6: expected 6 strings, lowest first, found 5")]
    [InlineData("x 0 4 6 0 0 3", "column 13: expected 6 strings, lowest first, found 7")]
    [InlineData("", "column 1: expected 6 strings, lowest first, found 0")]
    [InlineData("x 0 25 6 0 0", "column 5: string 4: fret 25 is off the neck, which has frets 1 to 24")]
    [InlineData("x0?600", "column 3: string 4: expected x, 0 or a fret, found '?'")]
    [InlineData("x 00 4 6 0 0", "column 3: string 5: expected x, 0 or a fret, found '00'")]
    [InlineData("x 0 = 6 0 0", "column 5: string 4: expected x, 0 or a fret, found '='")]
    [InlineData("^ x -0 2 4 0 0", "column 5: string 5: expected x, 0 or a fret, = beside the clamp or a negative fret behind it, found '-0'")]
    [InlineData("^ x 0 23 4 0 0", "column 7: string 4: fret 23 from the clamp at 2 is off the neck, which has frets 1 to 24")]
    [InlineData("^ x 0 2 4 -2 0", "column 11: string 2: fret -2 from the clamp at 2 is off the neck, which has frets 1 to 24")]
    public void Refuses(string text, string words) =>
        Assert.Equal(words, Fretting.Parse(text, Setup.Parse("2-4@2").Value).Fault.ToString());

    private static void ReadsBack(Fretting fretting, Setup setup)
    {
        if (Fretting.Parse(fretting.ToString(), setup).Value != fretting
            || Fretting.Parse(fretting.ToHomeText(setup), setup).Value != fretting)
        {
            Assert.Fail($"{fretting} or {fretting.ToHomeText(setup)} does not read back in {setup}");
        }
    }
}
