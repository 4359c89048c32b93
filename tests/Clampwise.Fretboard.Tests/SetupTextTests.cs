namespace Clampwise.Fretboard.Tests;

public class SetupTextTests
{
    [Theory]
    [InlineData("standard", "standard")]
    [InlineData("2-4@2", "standard + 2-4@2")]
    [InlineData("Standard + FULL@1 + 1-5@3", "standard + full@1 + 1-5@3")]
    [InlineData("E2 A2 D3 G3 B3 E4 + 4-2@2", "standard + 2-4@2")]
    [InlineData("DADGBE + 1,2,3@2", "drop D + 1-3@2")]
    [InlineData("D A D F# A D", "open D")]
    [InlineData("standard + 1-6@2", "standard + full@2")]
    [InlineData("standard + 3-5@4 + full@2", "standard + full@2 + 3-5@4")]
    [InlineData("standard + full@2* + 3-5@4", "standard + full@2* + 3-5@4")]
    [InlineData("standard* + 3-5@2", "standard* + 3-5@2")]
    [InlineData("standard* ", "standard")]
    [InlineData("standard + 2-4@2* + 1,6@4", "standard + 2-4@2* + 1,6@4")]
    [InlineData("D♯2 A2 D3 G3 + 4-3 @ 2", "D#2 A2 D3 G3 + 3-4@2")]
    [InlineData("Eb2 B♭2 D3 G3", "D#2 A#2 D3 G3")]
    public void Reads_and_prints(string text, string printed)
    {
        string actual = Setup.Parse(text).Value.ToString();
        Assert.Equal(printed.Replace("D#2", "Eb2", StringComparison.Ordinal).Replace("A#2", "Bb2", StringComparison.Ordinal), actual);
    }

    [Fact]
    public void Every_setup_reads_back() => Gens.Setups.Holds(setup => Assert.Equal(setup, Setup.Parse(setup.ToString()).Value));

    [Theory]
    [InlineData("", "column 1: expected a clamp such as 2-4@2 or full@1, found nothing")]
    [InlineData("standard +", "column 11: expected a clamp such as 2-4@2 or full@1, found nothing")]
    [InlineData("standard + capo", "column 12: expected a clamp such as 2-4@2 or full@1, found 'capo'")]
    [InlineData("standard + 2-7@2", "column 14: there is no string 7: strings are numbered 1, the highest, to 6")]
    [InlineData("standard + 1, 9@2", "column 15: there is no string 9: strings are numbered 1, the highest, to 6")]
    [InlineData("standard + 2-4-5@2", "column 12: expected strings such as 2-4, 1,3,5 or full, found '2-4-5'")]
    [InlineData("standard + 1,,3@2", "column 14: expected strings such as 2-4, 1,3,5 or full, found ''")]
    [InlineData("standard + 2-4@0", "column 16: expected the clamp's fret, 1 to 24, found '0'")]
    [InlineData("standard + 2-4@ 25", "column 17: expected the clamp's fret, 1 to 24, found '25'")]
    [InlineData("standard + 2-4@", "column 16: expected the clamp's fret, 1 to 24, found nothing")]
    [InlineData("standard + 2-4@2* + full@1*", "column 21: only one place can be home: mark one clamp, or the tuning for the nut, with *")]
    [InlineData("standard* + 2-4@2*", "column 13: only one place can be home: mark one clamp, or the tuning for the nut, with *")]
    [InlineData("standard + 2-4@2 + full@3", "column 20: clamp 2-4@2 lies behind full@3, which stops every string: put the partial clamp above fret 3")]
    [InlineData("standard + 2-4@2 + 4-5@2", "column 20: clamps 2-4@2 and 4-5@2 both hold string 4 at fret 2: give them different strings or frets")]
    [InlineData("standard + full@2 + full@2", "column 21: clamps full@2 and full@2 both hold strings 1-6 at fret 2: give them different strings or frets")]
    [InlineData("  sideways + 2@2", "column 3: no tuning is called 'sideways', and it does not read as pitches such as D2 A2 D3 G3 A3 D4: expected a note letter A to G in upper case, found 'sideways'")]
    [InlineData("E2 A2 D2 G3", "column 7: string 2 at D2 is lower than string 3 at A2: give pitches from the lowest string to the highest")]
    [InlineData("E2 A2 D3", "column 9: a tuning has 4 to 8 strings, found 3")]
    [InlineData("E2 A2 D3 E3 E3 E3 E3 E3 E3", "column 25: a tuning has 4 to 8 strings, found 9")]
    [InlineData("B-1 A2 D3 G3", "column 1: string 4 at B-1 is out of range: open strings lie from C0 to C7")]
    [InlineData("E2 A2 D3 C#7", "column 10: string 1 at C#7 is out of range: open strings lie from C0 to C7")]
    public void Refuses(string text, string words) => Assert.Equal(words, Setup.Parse(text).Fault.ToString());
}
