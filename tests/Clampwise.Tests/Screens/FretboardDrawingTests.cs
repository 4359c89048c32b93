using Clampwise.Fretboard;
using Clampwise.Look;

namespace Clampwise.Tests.Screens;

public class FretboardDrawingTests
{
    private static readonly Setup s_setup = Setup.Parse("standard + full@1 + 2-4@3").Value;

    [Theory]
    [InlineData(false, false)]
    [InlineData(false, true)]
    [InlineData(true, false)]
    [InlineData(true, true)]
    public void Four_ways_to_lie(bool isUpright, bool isLeftHanded)
    {
        var picture = new FretboardPicture(s_setup, Fretting.Parse("x05740", s_setup).Value)
        {
            Cursor = (StringNumber.Of(1), Fret.Of(5)),
            Marked = StringSet.Of([StringNumber.Of(3)]),
        };
        IReadOnlyList<Line> lines = FretboardDrawing.Draw(picture, GlyphSet.Unicode, 78, 40, new FretboardStyle(isUpright, isLeftHanded));
        Golden.Check($"fretboard-{(isUpright ? "upright" : "lying")}-{(isLeftHanded ? "left" : "right")}", string.Concat(lines.Select(line => line.ToString().TrimEnd() + "\n")));
    }

    [Fact]
    public void A_left_handed_board_is_the_mirror_of_a_right_handed_one()
    {
        var picture = new FretboardPicture(s_setup, Fretting.Parse("x05740", s_setup).Value);
        string right = Board(picture, isLeftHanded: false);
        string left = Board(picture, isLeftHanded: true);
        Assert.Equal(right, new string([.. left.Reverse()]));
    }

    [Fact]
    public void An_upright_board_that_does_not_fit_lies_down()
    {
        var picture = new FretboardPicture(s_setup, null);
        int lying = FretboardDrawing.Draw(picture, GlyphSet.Unicode, 78).Count;
        Assert.Equal(lying, FretboardDrawing.Draw(picture, GlyphSet.Unicode, 78, 10, new FretboardStyle(IsUpright: true)).Count);
        Assert.True(FretboardDrawing.Draw(picture, GlyphSet.Unicode, 78, 30, new FretboardStyle(IsUpright: true)).Count > lying);
    }

    // Every cell of string 4 between its label and its end.
    private static string Board(FretboardPicture picture, bool isLeftHanded) =>
        FretboardDrawing.Draw(picture, GlyphSet.Unicode, 78, 10, new FretboardStyle(IsLeftHanded: isLeftHanded))[4].ToString()[7..].TrimEnd().PadLeft(1).Trim();
}
