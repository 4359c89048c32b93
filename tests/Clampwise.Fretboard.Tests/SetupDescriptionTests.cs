using CsCheck;

namespace Clampwise.Fretboard.Tests;

public class SetupDescriptionTests
{
    [Theory]
    [InlineData("standard + 1-5@2", "same intervals as drop D, two semitones up")]
    [InlineData("standard + 3-5@2", "same intervals as DADGAD, two semitones up")]
    [InlineData("standard + 2-4@2", "same pitches as open A")]
    [InlineData("standard + 4-5@2", "same pitches as open E minor")]
    [InlineData("DADGAD + 2,6@2", "same pitches as E A D G B D")]
    [InlineData("drop D + 6@1", "no named tuning has these intervals")]
    [InlineData("half step down", "same pitches as half step down")]
    [InlineData("bass + full@12", "same intervals as bass, twelve semitones up")]
    public void Resemblance(string setup, string words) => Assert.Equal(words, SetupDescription.Of(Setup.Parse(setup).Value).Resemblance);

    [Fact]
    public void All_lines() => Assert.Equal(
    [
        "open strings E2 B2 E3 A3 B3 E4: Esus4, counted from the clamp at 2 Dsus4",
        "same intervals as DADGAD, two semitones up",
        "key of D counted from home, sounds E",
        "strings 3-5 held, strings 1-2,6 free",
        "clamp 4@1 is idle: higher clamps hold every string of it",
        "turned round: standard + 3@1 + 2-4@2, open strings E2 A2 E3 A3 C#4 E4: A/E, same pitches as open A",
    ], SetupDescription.Of(Setup.Parse("standard + 4@1 + 3-5@2").Value).Lines);

    [Fact]
    public void Two_setups_side_by_side() => Assert.Equal(
    [
        "standard + 3-5@2: Esus4, counted from the clamp at 2 Dsus4; same intervals as DADGAD, two semitones up",
        "standard + 2-4@2: A/E, counted from the clamp at 2 G/D; same pitches as open A",
        "string 5 rings B2, held, then A2, free: two semitones down",
        "string 2 rings B3, free, then C#4, held: two semitones up",
    ], SetupComparison.Of(Setup.Parse("3-5@2").Value, Setup.Parse("2-4@2").Value).Lines);

    [Fact]
    public void Two_setups_with_the_same_intervals()
    {
        var comparison = SetupComparison.Of(Setup.Parse("DADGAD").Value, Setup.Parse("3-5@2").Value);
        Assert.Equal(2, comparison.Transposition);
        Assert.Equal("the open strings are the same, two semitones up in the second", comparison.Lines.Last());
    }

    [Fact]
    public void A_match_is_the_named_tuning_moved_as_far_as_it_says() => Gens.Setups.Holds(setup =>
        Assert.All(NamedTunings.WithSameIntervals(setup.GroundPitches), match =>
            Assert.Equal(setup.GroundPitches, match.Named.Tuning.Pitches.Select(pitch => pitch + match.SemitonesUp))));

    [Fact]
    public void Any_setup_can_be_described() => Gens.Setups.Holds(setup => Assert.All(
        SetupDescription.Of(setup).Lines, line => Assert.False(string.IsNullOrWhiteSpace(line))));
}
