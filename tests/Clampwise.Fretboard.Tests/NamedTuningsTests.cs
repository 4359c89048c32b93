namespace Clampwise.Fretboard.Tests;

public class NamedTuningsTests
{
    [Fact]
    public void There_are_at_least_twenty_five_with_four_five_seven_and_eight_strings_among_them()
    {
        Assert.True(NamedTunings.All.Length >= 25);
        Assert.Equal([4, 5, 6, 7, 8], NamedTunings.All.Select(named => named.Tuning.StringCount).Distinct().Order());
    }

    [Fact]
    public void Every_name_is_of_one_tuning_and_every_tuning_has_one_line()
    {
        string[] names =
            [.. NamedTunings.All.SelectMany(named => named.Aliases.Prepend(named.Name)).Select(name => name.ToUpperInvariant())];
        Assert.Equal(names.Length, names.Distinct().Count());
        Assert.Equal(NamedTunings.All.Length, NamedTunings.All.Select(named => named.Tuning).Distinct().Count());
    }

    [Fact]
    public void Every_name_reads_as_its_tuning_also_before_a_clamp() => Assert.All(NamedTunings.All, named =>
    {
        Assert.All(named.Aliases.Prepend(named.Name), name => Assert.Equal(named.Tuning, Setup.Parse($"{name} + 1-2@2").Value.Tuning));
        Assert.Equal(named.Name, named.Tuning.ToString());
    });

    // Common practice, no source; the pitches as the trade lists them.
    [Theory]
    [InlineData("drop D", "D2 A2 D3 G3 B3 E4")]
    [InlineData("DADGAD", "D2 A2 D3 G3 A3 D4")]
    [InlineData("EBEG#BE", "E2 B2 E3 G#3 B3 E4")]
    [InlineData("open Gm", "D2 G2 D3 G3 Bb3 D4")]
    [InlineData("seven string", "B1 E2 A2 D3 G3 B3 E4")]
    [InlineData("eight string", "F#1 B1 E2 A2 D3 G3 B3 E4")]
    [InlineData("bass", "E1 A1 D2 G2")]
    [InlineData("five string bass", "B0 E1 A1 D2 G2")]
    public void Well_known_ones(string name, string pitches) => Assert.Equal(pitches, string.Join(' ', NamedTunings.Find(name)!.Pitches));
}
