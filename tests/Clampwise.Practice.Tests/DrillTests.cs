using Clampwise.Fretboard;

namespace Clampwise.Practice.Tests;

public class DrillTests
{
    private static readonly Setup s_setup = Setup.Parse("standard + 2-4@2").Value;

    private static DrillVoicing Voicing(string fretting, string setup = "standard + 2-4@2") =>
        new(Fretboard.Voicing.Parse(Setup.Parse(setup).Value, fretting).Value);

    private static string FaultOf(params DrillVoicing[] voicings) =>
        Drill.Create(DrillId.Parse("quay").Value, "Quay", s_setup, voicings).Fault.Message;

    [Fact]
    public void A_drill_says_what_is_wrong_with_it()
    {
        Assert.Equal("drill quay has no voicings: expected one or more", FaultOf());
        Assert.Equal("voicing 2 is played in standard: expected one in standard + 2-4@2", FaultOf(Voicing("x00000"), Voicing("x02220", "standard")));
        Assert.Equal("voicing 2 (x00000) is the same as voicing 1: expected each one once", FaultOf(Voicing("x00000"), Voicing("x00000")));
        Assert.True(Drill.Create(DrillId.Parse("quay").Value, "Quay", s_setup, [Voicing("x00000"), Voicing("x04400")]).IsGood);
    }

    [Theory]
    [InlineData("open-a", true)]
    [InlineData("many-1-2", true)]
    [InlineData("", false)]
    [InlineData("Open", false)]
    [InlineData("a--b", false)]
    [InlineData("-a", false)]
    [InlineData("a b", false)]
    public void Ids(string text, bool isGood) => Assert.Equal(isGood, DrillId.Parse(text).IsGood);

    [Fact]
    public void A_shape_in_two_drills_of_one_rig_is_one_item_wherever_the_full_capo_is()
    {
        Drill low = Examples.Drill("low", "standard + 1-5@2", "x04440");
        Drill high = Examples.Drill("high", "standard + full@3 + 1-5@5", "x07770");
        Assert.Equal(Repertoire.Of([low]).Items.Length, Repertoire.Of([low, high]).Items.Length);
        Assert.Equal(Repertoire.Of([low]).Items.Select(item => item.Key), Repertoire.Of([high]).Items.Select(item => item.Key));
        Assert.Equal(("B", "D"), (low.Voicings[0].Voicing.SoundingName, high.Voicings[0].Voicing.SoundingName));
    }
}
