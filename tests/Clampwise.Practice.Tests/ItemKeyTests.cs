using Clampwise.Fretboard;

namespace Clampwise.Practice.Tests;

public class ItemKeyTests
{
    private static ShapeKey Key(string setup, string fretting) => ShapeKey.Of(Voicing.Parse(Setup.Parse(setup).Value, fretting).Value);

    [Fact]
    public void Every_direction_reads_back()
    {
        ShapeKey shape = Key("standard + 2-4@2", "x04600");
        foreach (Direction direction in Enum.GetValues<Direction>())
        {
            var key = new ItemKey(shape, direction);
            Assert.Equal(key, ItemKey.Parse(key.ToString()).Value);
        }
    }

    [Fact]
    public void The_text_form_is_stable() => Assert.Equal(
        "E2 A2 D3 G3 B3 E4 + 2-4@2 | ^ x 0 2 4 0 0 | hear-name",
        new ItemKey(Key("2-4@2", "x04600"), Direction.HearSayName).ToString());

    [Theory]
    [InlineData("standard + 2-4@2", "x04600", "standard + full@1 + 2-4@3", "x05700")]
    [InlineData("drop D + 1-5@2", "004400", "drop D + full@3 + 1-5@5", "007700")]
    [InlineData("standard", "x32010", "standard + full@2", "x54030")]
    // Counted from the full capo, the rig is one that is counted from the nut.
    [InlineData("standard* + 2-4@2", "x04600", "standard + full@1* + 2-4@3", "x05700")]
    public void A_full_capo_beneath_the_rig_leaves_the_memory(string setup, string fretting, string moved, string movedFretting) =>
        Assert.Equal(Key(setup, fretting), Key(moved, movedFretting));

    [Theory]
    [InlineData("standard + 2-4@2", "x04600")]
    [InlineData("standard + full@1* + 2-4@3", "x05700")]
    [InlineData("D2 A2 D3 G3 A3 D4 + 1-4@4", "4 0 6 7 0 0")]
    public void The_voicing_comes_back_from_its_key(string setup, string fretting)
    {
        ShapeKey key = Key(setup, fretting);
        Assert.Equal(key, ShapeKey.Of(key.InRig().Value));
        Assert.Equal(key, ShapeKey.Parse(key.ToString()).Value);
    }

    [Theory]
    [InlineData("nonsense", "expected an item as 'rig | shape | direction', found 'nonsense'")]
    [InlineData("a | b | sing", "there is no direction 'sing': expected one of see-shape-name, see-sounding-name, place, hear-name, hear-pick, hear-compare, shape-to-sounding, sounding-to-shape, change")]
    public void Refuses(string text, string words) => Assert.Equal(words, ItemKey.Parse(text).Fault.ToString());
}
