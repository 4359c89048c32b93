using CsCheck;

namespace Clampwise.Fretboard.Tests;

public class SetupTests
{
    [Theory]
    [InlineData("standard + 2-3@2 + 2-4@4", "2-3@2")]
    [InlineData("standard + full@1 + full@3", "full@1")]
    [InlineData("standard + full@1 + 1-5@3", "")]
    [InlineData("standard + 1-3@2 + 4-6@3 + 2,5@5", "")]
    public void Clamps_that_hold_nothing_by_themselves_are_idle(string setup, string idle) =>
        Assert.Equal(idle, string.Join(' ', Setup.Parse(setup).Value.IdleClamps));

    [Theory]
    [InlineData("standard + full@1 + 1-5@3", "standard + 1-5@2")]
    [InlineData("standard + full@5", "standard")]
    [InlineData("standard + full@1 + full@3", "standard")]
    [InlineData("standard + full@2* + 3-5@4", "standard* + 3-5@2")]
    [InlineData("standard + 3-5@2", "standard + 3-5@2")]
    public void The_rig_is_what_lies_above_the_full_capo(string setup, string rig) =>
        Assert.Equal(rig, Setup.Parse(setup).Value.Rig.ToString());

    [Theory]
    [InlineData("standard + 2-4@2", "standard + 3-5@2")]
    [InlineData("standard + 1-5@2", "standard + 2-6@2")]
    [InlineData("standard + full@1 + 1@3* + 2-3@5", "standard + full@1 + 6@3* + 4-5@5")]
    public void Turned_round_a_clamp_holds_the_other_side(string setup, string turned) =>
        Assert.Equal(turned, Setup.Parse(setup).Value.Turned().Value.ToString());

    [Fact]
    public void A_fret_counts_from_home_and_back() => Gen.Select(Gens.Setups, Gen.Int[0, Fret.Last]).Holds((setup, fret) =>
    {
        HomeFret fromHome = setup.FromHome(Fret.Of(fret));
        Assert.Equal(fret - setup.HomeFret.Number, fromHome.Number);
        Assert.Equal(Fret.Of(fret), setup.FromNut(fromHome));
        Assert.Null(HomeFret.Of(Fret.Last + 1));
        Assert.Null(HomeFret.Of(int.MinValue));
    });

    [Fact]
    public void Turned_twice_is_the_same_setup() =>
        Gens.Setups.Holds(setup => Assert.Equal(setup, setup.Turned().Value.Turned().Value));

    [Fact]
    public void Every_string_is_held_or_free() => Gens.Setups.Holds(setup =>
    {
        Assert.Equal(StringSet.All(setup.StringCount), setup.HeldStrings.Union(setup.FreeStrings));
        Assert.Equal(0, setup.HeldStrings.Intersect(setup.FreeStrings).Count);
        Assert.All(setup.HeldStrings.Strings, number => Assert.Contains(setup.Clamps, clamp => clamp.Fret == setup.Ground(number)));
    });

    [Fact]
    public void Moving_there_and_back_is_the_same_setup() => Gen.Select(Gens.Setups, Gen.Int[-4, 4]).Holds((setup, frets) =>
        Assert.True(!setup.MovedBy(frets).TryGet(out Setup? moved, out _) || moved.MovedBy(-frets).Value.Equals(setup)));

    [Fact]
    public void Clamps_on_strings_that_do_not_exist_are_refused_without_a_column()
    {
        Clamp clamp = Clamp.Create(StringSet.All(6), Fret.Of(2), 6).Value;
        Assert.Equal(
            "there is no string 5: strings are numbered 1, the highest, to 4",
            Setup.Create(NamedTunings.Find("bass")!, [clamp]).Fault.ToString());
    }

    [Fact]
    public void An_empty_clamp_a_clamp_at_the_nut_and_a_stranger_as_home_are_refused()
    {
        Assert.Equal("clamp 1-3@0 sits at the nut: a clamp goes at fret 1 or above", Clamp.Create(StringSet.All(3), Fret.Nut, 6).Fault.Message);
        Assert.Equal("the clamp at fret 2 holds no string: name at least one", Clamp.Create(default, Fret.Of(2), 6).Fault.Message);
        Assert.Equal("there is no string 5: strings are numbered 1, the highest, to 4", Clamp.Create(StringSet.All(6), Fret.Of(2), 4).Fault.Message);
        Assert.Equal("the home clamp full@2 is not among the clamps", Setup.Create(Tuning.Standard, [], Clamp.Full(Fret.Of(2), 6)).Fault.Message);
    }
}
