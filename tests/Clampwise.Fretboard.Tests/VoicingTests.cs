namespace Clampwise.Fretboard.Tests;

public class VoicingTests
{
    [Fact]
    public void A_three_string_clamp_gives_its_ground_pitches()
    {
        Setup setup = Setup.Parse("standard + 2-4@2").Value;
        Assert.Equal("E2 A2 E3 A3 C#4 E4", string.Join(' ', setup.GroundPitches));
    }

    [Fact]
    public void A_finger_behind_the_ground_of_a_held_string_is_refused()
    {
        Setup setup = Setup.Parse("2-4@2").Value;
        Assert.Equal(
            "string 3 is held by the clamp at 2: a finger at fret 2 changes nothing, use a fret above 2 or 0",
            Voicing.Parse(setup, "x00200").Fault.Message);
    }

    [Theory]
    [InlineData("standard + 2-4@2")]
    [InlineData("standard + full@1 + 1-5@3")]
    [InlineData("standard + 2-4@2* + 1,6@4")]
    [InlineData("drop D + 1-5@2")]
    [InlineData("C2 G2 C3 G3 C4 E4 + 4-5@2")]
    public void Setup_text_reads_back(string text) => Assert.Equal(text, Setup.Parse(text).Value.ToString());
}
