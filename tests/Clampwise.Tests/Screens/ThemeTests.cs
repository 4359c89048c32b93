using Clampwise.Look;
using Clampwise.Terminal;
using Clampwise.Theory;

namespace Clampwise.Tests.Screens;

[Collection(nameof(TestTerminal))]
public class ThemeTests
{
    // The shades of the sixteen colours in two wide-spread palettes, in the order of their numbers; values from memory: the colour
    // text modes of the VGA, and the resources that xterm is shipped with.
    private static readonly Dictionary<string, int[]> s_palettes = new()
    {
        ["vga"] = [0x000000, 0xaa0000, 0x00aa00, 0xaa5500, 0x0000aa, 0xaa00aa, 0x00aaaa, 0xaaaaaa, 0x555555, 0xff5555, 0x55ff55, 0xffff55, 0x5555ff, 0xff55ff, 0x55ffff, 0xffffff],
        ["xterm"] = [0x000000, 0xcd0000, 0x00cd00, 0xcdcd00, 0x0000ee, 0xcd00cd, 0x00cdcd, 0xe5e5e5, 0x7f7f7f, 0xff0000, 0x00ff00, 0xffff00, 0x5c5cff, 0xff00ff, 0x00ffff, 0xffffff],
    };

    private static readonly BasicColour[] s_order = [.. ThemeColour.BasicNames.Values];

    public static TheoryData<string, string> Tones()
    {
        var rows = new TheoryData<string, string>();
        foreach (Theme theme in ThemeBook.Shipped.Themes)
        {
            foreach (Tone tone in Enum.GetValues<Tone>())
            {
                rows.Add(theme.Name, tone.ToString());
            }
        }

        return rows;
    }

    // Numbers of the standard's own kind: black on white is 21:1, and a grey that authoring tools list as just passing on white.
    [Fact]
    public void The_formula_gives_the_known_numbers()
    {
        Assert.Equal(21.0, Contrast.Between(Rgb.Of(0x000000), Rgb.Of(0xffffff)), 6);
        Assert.Equal(1.0, Contrast.Between(Rgb.Of(0x123456), Rgb.Of(0x123456)), 6);
        Assert.Equal(4.54, Contrast.Between(Rgb.Of(0x767676), Rgb.Of(0xffffff)), 2);
        Assert.Equal(4.48, Contrast.Between(Rgb.Of(0x777777), Rgb.Of(0xffffff)), 2);
    }

    [Fact]
    public void There_are_four_themes_and_each_is_found_by_its_name()
    {
        Assert.Equal(["own", "dark", "light", "plain"], ThemeBook.Shipped.Names);
        Assert.All(ThemeBook.Shipped.Names, name => Assert.Equal(name, ThemeBook.Shipped[name].Name));
        Assert.Equal("own", ThemeBook.Shipped["no such theme"].Name);
    }

    [Theory]
    [MemberData(nameof(Tones))]
    public void Every_tone_is_legible_on_every_ground(string name, string tone)
    {
        Theme theme = ThemeBook.Shipped[name];
        Assert.NotEmpty(theme.Grounds);
        if (theme.Styles[(int)Enum.Parse<Tone>(tone)].Ink is not { } ink)
        {
            Assert.Null(theme.Ground);
            return;
        }

        Assert.All(theme.Grounds, ground => Assert.True(
            Contrast.Between(ink.Exact, ground) >= Contrast.Enough, $"{ink.Exact} on {ground}: {Contrast.Between(ink.Exact, ground):0.00}"));
    }

    [Theory]
    [InlineData("vga")]
    [InlineData("xterm")]
    public void With_sixteen_colours_every_tone_is_legible_too(string palette)
    {
        Theme[] painted = [.. ThemeBook.Shipped.Themes.Where(theme => theme.Ground is not null)];
        Assert.Equal(2, painted.Length);
        foreach (Theme theme in painted)
        {
            Rgb ground = Shade(palette, theme.Ground!.Value.Basic!.Value);
            foreach (ThemeStyle style in theme.Styles)
            {
                BasicColour basic = style.Ink!.Value.Basic!.Value;
                Assert.True(Contrast.Between(Shade(palette, basic), ground) >= Contrast.Enough, $"{theme.Name}: {basic} in {palette}");
                // Many terminals show bold in the bright twin of its colour.
                Rgb bright = Shade(palette, s_order[(Array.IndexOf(s_order, basic) % 8) + 8]);
                Assert.True(!style.Emphasis.HasFlag(Emphasis.Bold) || Contrast.Between(bright, ground) >= Contrast.Enough, $"{theme.Name}: bold {basic} in {palette}");
            }
        }
    }

    [Fact]
    public void What_lies_on_the_terminals_own_ground_shows_none_of_the_sixteen()
    {
        Assert.Same(Theme.Plain, Theme.Own.At(ColourDepth.Sixteen));
        Assert.Equal("dark", ThemeBook.Shipped["dark"].At(ColourDepth.Sixteen).Name);
        Assert.Equal(CellColour.Of(BasicColour.BrightCyan), ThemeBook.Shipped["dark"].At(ColourDepth.Sixteen)[Tone.Key].Ink);
        Assert.All(ThemeBook.Shipped.Themes, theme => Assert.Same(Theme.Plain, theme.At(ColourDepth.None)));
    }

    [Fact]
    public void Plain_has_no_colour_and_still_tells_wrong_and_cursor_apart()
    {
        Assert.All(Enum.GetValues<Tone>(), tone => Assert.Equal((default, default), (Theme.Plain[tone].Ink, Theme.Plain[tone].Ground)));
        Assert.NotEqual(Theme.Plain[Tone.Right].Emphasis, Theme.Plain[Tone.Wrong].Emphasis);
        Assert.NotEqual(Theme.Plain[Tone.Plain].Emphasis, Theme.Plain[Tone.Cursor].Emphasis);
    }

    [Theory]
    [InlineData("xterm-256color", null, null, "Full")]
    [InlineData("xterm", "truecolor", null, "Full")]
    [InlineData("vt100", "24bit", null, "Full")]
    [InlineData("xterm-direct", null, null, "Full")]
    [InlineData("linux", null, null, "Sixteen")]
    [InlineData("xterm", null, null, "Sixteen")]
    [InlineData(null, null, null, "Sixteen")]
    [InlineData("xterm-256color", "truecolor", "1", "None")]
    [InlineData("xterm-256color", null, "", "Full")]
    [InlineData("dumb", "truecolor", null, "None")]
    public void The_environment_says_how_many_colours_there_are(string? term, string? colorTerm, string? noColor, string depth)
    {
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(depth, ColourDepths.Of(name => name switch { "TERM" => term, "COLORTERM" => colorTerm, "NO_COLOR" => noColor, _ => null }).ToString());
        }
    }

    [Theory]
    [InlineData("[x]\nabout = 3", "line 2, column 1: 'about' takes a text in quotes")]
    [InlineData("[x]\nink = \"\"", "there is no key 'ink' in a theme")]
    [InlineData("[x]\nplain = \"#12345\"", "'#12345' is no colour or style")]
    [InlineData("[x]\nplain = \"red\"", "add it as #rrggbb")]
    [InlineData("[x]\ngrounds = \"#000000\"", "takes a list of colours")]
    [InlineData("[x]\ngrounds = [\"bold\"]", "takes colours")]
    [InlineData("[x]\nplain = \"\"", "lacks a style for strong, quiet")]
    [InlineData("", "there is no theme")]
    [InlineData("[x", "line 1")]
    public void A_theme_that_does_not_read_says_why(string text, string words)
    {
        Assert.False(ThemeReader.Read(text, "themes.toml").TryGet(out _, out Fault? fault));
        Assert.Contains(words, fault.Message);
    }

    private static Rgb Shade(string palette, BasicColour name) => Rgb.Of(s_palettes[palette][Array.IndexOf(s_order, name)]);
}
