using Clampwise.Theory;

namespace Clampwise.Fretboard.Tests;

public class HomeClampTests
{
    [Theory]
    [InlineData("standard + 3-5@2", "along", 1, "standard + 3-5@3")]
    [InlineData("standard + 3-5@2", "along", -1, "standard + 3-5@1")]
    [InlineData("standard + full@1 + 2-4@3", "along", 2, "standard + full@1 + 2-4@5")]
    [InlineData("standard + 3-5@2", "across", 1, "standard + 4-6@2")]
    [InlineData("standard + 3-5@2", "across", -2, "standard + 1-3@2")]
    [InlineData("standard + 1,3,5@2", "across", 1, "standard + 2,4,6@2")]
    [InlineData("standard + 3-5@2", "wider", 0, "standard + 3-6@2")]
    [InlineData("standard + 3-6@2", "wider", 0, "standard + 2-6@2")]
    [InlineData("standard + 2-6@2", "wider", 0, "standard + full@2")]
    [InlineData("standard + 3-5@2", "narrower", 0, "standard + 3-4@2")]
    [InlineData("standard", "added", 0, "standard + 2-4@2")]
    [InlineData("standard + 3-5@2", "added", 0, "standard + 3-5@2 + 2-4@4")]
    [InlineData("standard + 3-5@2 + 2-4@4", "removed", 0, "standard + 3-5@2")]
    [InlineData("standard + 3-5@2", "removed", 0, "standard")]
    [InlineData("standard + full@1 + 3-5@3", "removed", 0, "standard + full@1")]
    [InlineData("standard", "removed", 0, "standard")]
    [InlineData("standard + 4-5@2 + 1-3@4", "next", 0, "standard + 4-5@2* + 1-3@4")]
    [InlineData("standard + 4-5@2* + 1-3@4", "next", 0, "standard + 4-5@2 + 1-3@4")]
    public void Steps(string from, string step, int by, string to) => Assert.Equal(to, Step(from, step, by).Value.ToString());

    [Theory]
    [InlineData("standard + 3-5@1", "along", -1, "frets run from 1 to 24")]
    [InlineData("standard + 1-3@2", "across", -1, "the strings are 1 to 6")]
    [InlineData("standard + 4-6@2", "across", 1, "the strings are 1 to 6")]
    [InlineData("standard + 3@2", "narrower", 0, "holds no string")]
    [InlineData("standard", "along", 1, "no partial clamp")]
    [InlineData("standard + full@2", "wider", 0, "no partial clamp")]
    [InlineData("standard + full@2 + 2-4@3", "along", -1, "")]
    [InlineData("standard + 2-4@24", "added", 0, "26")]
    public void What_cannot_be_is_refused(string from, string step, int by, string why)
    {
        Assert.False(Step(from, step, by).TryGet(out _, out Fault? fault));
        Assert.Contains(why, fault.Message);
    }

    [Fact]
    public void There_and_back_is_the_same_setup() => Gens.Setups.Holds(setup =>
    {
        if (HomeClamp.Along(setup, 1).Then(moved => HomeClamp.Along(moved, -1)).TryGet(out Setup? back, out _))
        {
            Assert.Equal(setup, back);
        }

        if (HomeClamp.Across(setup, 1).Then(moved => HomeClamp.Across(moved, -1)).TryGet(out Setup? over, out _))
        {
            Assert.Equal(setup, over);
        }
    });

    private static Result<Setup> Step(string from, string step, int by)
    {
        Setup setup = Setup.Parse(from).Value;
        return step switch
        {
            "along" => HomeClamp.Along(setup, by),
            "across" => HomeClamp.Across(setup, by),
            "wider" => HomeClamp.Wider(setup),
            "narrower" => HomeClamp.Narrower(setup),
            "added" => HomeClamp.Added(setup),
            "removed" => HomeClamp.Removed(setup),
            _ => HomeClamp.Next(setup),
        };
    }
}
