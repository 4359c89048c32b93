using Clampwise.Charts;
using Clampwise.Fretboard;
using Clampwise.Screens;

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
        Check($"fretboard-{(isUpright ? "upright" : "lying")}-{(isLeftHanded ? "left" : "right")}", picture, 78, 40, new FretboardStyle(isUpright, isLeftHanded));
    }

    [Theory]
    [InlineData("wide-degrees", "standard + 3-5@2", "006400", 118, 34, nameof(DotSign.Degrees))]
    [InlineData("wide-pitches-left", "standard + 3-5@2", "006400", 118, 34, nameof(DotSign.Pitches))]
    [InlineData("high", "standard + 3-5@2", "006400", 78, 34, nameof(DotSign.Dots))]
    [InlineData("narrow-degrees", "standard + 3-5@2", "006400", 58, 12, nameof(DotSign.Degrees))]
    [InlineData("widest-eight", "E1 A1 D2 G2 C3 F3 A#3 D4 + 1-6@3 + 7-8@5", "0x000660", 198, 47, nameof(DotSign.Fingers))]
    [InlineData("four", "E1 A1 D2 G2 + full@5", "0x79", 78, 12, nameof(DotSign.Dots))]
    public void As_large_as_the_room_allows(string name, string setup, string fretting, int width, int height, string sign) =>
        Check($"fretboard-{name}", Signed(setup, fretting, Enum.Parse<DotSign>(sign)), width, height, new FretboardStyle(IsLeftHanded: name.Contains("left", StringComparison.Ordinal)));

    [Theory]
    [InlineData("lying", 78, 12, false)]
    [InlineData("wide", 118, 34, false)]
    [InlineData("upright", 78, 24, true)]
    [InlineData("ascii", 118, 34, false)]
    [InlineData("upright-ascii", 78, 44, true)]
    public void Two_frettings_on_one_board(string name, int width, int height, bool isUpright)
    {
        Setup setup = Setup.Parse("standard + 3-5@2").Value;
        var comparison = VoicingComparison.Of(Voicing.Parse(setup, "006400").Value, Voicing.Parse(setup, "x04450").Value);
        FretboardPicture picture = new TwoVoicings(comparison, "right", "yours").Picture;
        bool isAscii = name.Contains("ascii", StringComparison.Ordinal);
        Check($"fretboard-both-{name}", picture, width, height, new FretboardStyle(isUpright, isAscii), isAscii ? GlyphSet.Ascii : GlyphSet.Unicode);
    }

    [Theory]
    [InlineData(nameof(FretCount.Both), "fret  1  2  3•", "clamp  0  1  2  3  4")]
    [InlineData(nameof(FretCount.Nut), "fret  1  2  3•", "6 E2")]
    [InlineData(nameof(FretCount.Clamp), "clamp  -2  -1  0•  1", "6 E2")]
    public void Frets_are_counted_from_the_nut_from_the_clamp_or_from_both(string from, string first, string last)
    {
        FretCount count = Enum.Parse<FretCount>(from);
        string[] lines = Lines(new FretboardPicture(s_setup, null), 78, 12, new FretboardStyle(Count: count));
        Assert.StartsWith(first, Squeezed(lines[0]));
        Assert.StartsWith(last, Squeezed(lines[^1]));
        string[] upright = Lines(new FretboardPicture(s_setup, null), 78, 18, new FretboardStyle(IsUpright: true, Count: count));
        Assert.Contains(count switch { FretCount.Both => " 4 = 1 ", FretCount.Nut => " 4     ", _ => " 1     " }, upright[9]);
    }

    [Fact]
    public void Without_a_home_clamp_frets_are_counted_from_the_nut()
    {
        var open = new FretboardPicture(Setup.Parse("standard").Value, null);
        Assert.StartsWith("fret  1  2", Squeezed(Lines(open, 78, 12, new FretboardStyle(Count: FretCount.Clamp))[0]));
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
        int lying = Lines(picture, 78, 10, FretboardStyle.Usual).Length;
        Assert.Equal(lying, Lines(picture, 78, 10, new FretboardStyle(IsUpright: true)).Length);
        Assert.True(Lines(picture, 78, 30, new FretboardStyle(IsUpright: true)).Length > lying);
    }

    [Fact]
    public void Fewer_frets_are_larger_and_more_are_seen_as_far_as_there_is_room()
    {
        FretboardPicture picture = Signed("standard + 3-5@2", "006400", DotSign.Dots);
        Assert.Equal(7, FretboardDrawing.FretsShown(picture, 78, 20, FretboardStyle.Usual));
        Assert.Equal(12, FretboardDrawing.FretsShown(picture, 198, 20, FretboardStyle.Usual));
        Assert.Equal(4, FretboardDrawing.FretsShown(picture with { Frets = FretWindow.Closer(5) }, 78, 20, FretboardStyle.Usual));
        Assert.Equal(24, FretboardDrawing.FretsShown(picture with { Frets = FretWindow.Wider(19) }, 118, 20, FretboardStyle.Usual));
        Assert.Equal(18, FretboardDrawing.FretsShown(picture with { Frets = 24 }, 78, 20, FretboardStyle.Usual));
        Assert.Equal((4, 24), (FretWindow.Closer(4), FretWindow.Wider(24)));
        string[] close = Lines(picture with { Frets = 5 }, 78, 20, FretboardStyle.Usual);
        Assert.StartsWith("fret  2  3  4  5  6", Squeezed(close[0]));
        Assert.Equal(13, close.Length);
    }

    private static FretboardPicture Signed(string setup, string fretting, DotSign sign)
    {
        var voicing = Voicing.Parse(Setup.Parse(setup).Value, fretting).Value;
        return DotSigns.On(new FretboardPicture(voicing.Setup, voicing.Fretting) { Notes = VoicingNotes.Of(voicing) }, sign, Hand.Medium);
    }

    private static string[] Lines(FretboardPicture picture, int width, int height, FretboardStyle style, GlyphSet? glyphs = null) =>
        [.. FretboardDrawing.Draw(picture, glyphs ?? GlyphSet.Unicode, width, height, style).Select(line => line.ToString())];

    private static void Check(string name, FretboardPicture picture, int width, int height, FretboardStyle style, GlyphSet? glyphs = null) =>
        Golden.Check(name, string.Concat(Lines(picture, width, height, style, glyphs).Select(line => line.TrimEnd() + "\n")));

    private static string Squeezed(string line) => string.Join("  ", line.Split("  ", StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));

    // Every cell of string 4 between its label and its end.
    private static string Board(FretboardPicture picture, bool isLeftHanded) =>
        Lines(picture, 78, 10, new FretboardStyle(IsLeftHanded: isLeftHanded))[4][7..].Trim();
}
