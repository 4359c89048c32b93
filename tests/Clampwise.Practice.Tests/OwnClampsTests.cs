using Clampwise.Fretboard;

namespace Clampwise.Practice.Tests;

public class OwnClampsTests
{
    [Theory]
    [InlineData("3", "standard + 3-5@2", true)]
    [InlineData("3", "standard + 1-3@4", true)]
    [InlineData("3", "standard + 1-5@2", false)]
    [InlineData("3, 5", "standard + 1-5@2", true)]
    [InlineData("3", "standard + full@1 + 2-4@3", true)]
    [InlineData("3", "standard + full@1", true)]
    [InlineData("3", "standard + 4-5@2 + 1-3@4", false)]
    [InlineData("2, 3", "standard + 4-5@2 + 1-3@4", true)]
    [InlineData("3", "standard + 1,3,5@2", false)]
    [InlineData("1", "standard + 1,3,5@2", true)]
    [InlineData("1 2", "standard + 1-2,6@2", true)]
    [InlineData("", "standard + 1,3-4,6@7", true)]
    public void A_setup_fits_if_each_run_of_its_strings_has_a_clamp(string own, string setup, bool fits) =>
        Assert.Equal(fits, OwnClamps.Parse(own).Value.Fit(Setup.Parse(setup).Value));

    [Theory]
    [InlineData("5, 3", "3, 5")]
    [InlineData(" 3 ", "3")]
    [InlineData("", "")]
    [InlineData("3,3,4", "3, 4")]
    public void A_list_reads_and_prints(string text, string printed) => Assert.Equal(printed, $"{OwnClamps.Parse(text).Value}");

    [Theory]
    [InlineData("three", "'three'")]
    [InlineData("3, 9", "'9'")]
    [InlineData("0", "'0'")]
    [InlineData("-3", "'-3'")]
    public void What_is_no_width_is_refused_by_name(string text, string named)
    {
        Assert.False(OwnClamps.Parse(text).TryGet(out _, out Theory.Fault? fault));
        Assert.Contains(named, fault.Message);
        Assert.Contains("1 to 8", fault.Message);
    }

    [Fact]
    public void No_drill_opens_that_takes_a_clamp_not_owned()
    {
        Drill[] drills = [Examples.Drill("five", "standard + 1-5@2", "004430"), Examples.Drill("three", "standard + 3-5@2", "x00000")];
        MemoryState memory = Examples.Nothing;
        Assert.Equal("five", DrillPath.Open(drills, memory).Single().Id.ToString());
        Assert.Equal("three", DrillPath.Open(drills, memory, OwnClamps.Of(3)).Single().Id.ToString());
        Assert.Empty(DrillPath.Open(drills, memory, OwnClamps.Of(4)));
    }

    [Fact]
    public void The_first_three_questions_show_play_and_show_three_shapes()
    {
        SessionPlan plan = FirstQuestions.Plan(Examples.Quay, canListen: true);
        Assert.Equal([Direction.SeeShapeSayShapeName, Direction.HearSayName, Direction.SeeShapeSayShapeName], plan.Items.Select(planned => planned.Item.Key.Direction));
        Assert.Equal(3, plan.Items.Select(planned => planned.Item.Key.Shape).Distinct().Count());
        Assert.Null(plan.Length);
        Assert.All(FirstQuestions.Plan(Examples.Quay, canListen: false).Items, planned => Assert.False(planned.Item.Key.Direction.NeedsSound()));
    }
}
