using System.Text.RegularExpressions;
using Clampwise.Fretboard;
using Clampwise.Look;
using Clampwise.Screens;
using Clampwise.Terminal;

namespace Clampwise.Tests.Screens;

[Collection(nameof(TestTerminal))]
public class ExplorerPageTests
{
    private static Room Opened(int columns = 80, int rows = 24)
    {
        var room = new Room(columns, rows);
        room.Frame.Open(new ExplorerPage(room.Frame, room.Desk, Setup.Parse("standard + 2-4@2").Value));
        return room;
    }

    [Fact]
    public void The_fretboard_takes_the_room_of_a_large_terminal()
    {
        using Room room = Opened(200, 50);
        room.Press(KeyPress.Down, KeyPress.Down, KeyPress.Down, KeyPress.Right, KeyPress.Space).Type("x").Press(KeyPress.Space);
        Golden.Check("explorer-200x50", room.Screen);
    }

    [Fact]
    public void A_full_capo_moves_the_sounding_name_alone()
    {
        using Room room = Opened();
        Assert.Contains("sounding name  A/E", room.Screen);
        room.Type("+");
        Assert.Contains("shape name     G/D", room.Screen);
        Assert.Contains("sounding name  Bb/F", room.Screen);
        Assert.Contains("standard + full@1 + 2-4@3", room.Screen);
        Assert.Contains("sounding name  A/E", room.Type("-").Screen);
    }

    [Theory]
    [InlineData(60, 20)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void A_marked_voicing_stays_in_the_picture_with_what_moved(int columns, int rows)
    {
        using Room room = Opened(columns, rows);
        room.Press(KeyPress.Down, KeyPress.Down, KeyPress.Right, KeyPress.Space).Type("m");
        Assert.Contains("no string differs", room.Screen);
        room.Press(KeyPress.Right, KeyPress.Right, KeyPress.Space, KeyPress.Down, KeyPress.Down).Type("x");
        Golden.Check($"explorer-marked-{columns}x{rows}", room.Screen);
        Assert.Contains("string 3: now fret 6 (C#4), before fret 4 (B3)", room.Screen);
        Assert.Contains("string 5: now muted, before rings from the nut (A2)", room.Screen);
        Assert.Contains("no string differs", room.Type("m").Screen);
        Assert.DoesNotContain("differs", room.Type("m").Screen);
    }

    [Fact]
    public void A_mark_tells_what_a_found_voicing_moves_and_goes_with_its_setup()
    {
        using Room room = Opened();
        room.Type("mfd").Press(KeyPress.Enter, KeyPress.Down, KeyPress.Enter);
        Assert.Contains("□ before", room.Screen);
        Assert.DoesNotContain("□ before", room.Type("+").Screen);
    }

    [Fact]
    public void A_mark_in_colour()
    {
        using var room = new Room(theme: Theme.Own);
        room.Frame.Open(new ExplorerPage(room.Frame, room.Desk, Setup.Parse("standard + 2-4@2").Value));
        room.Press(KeyPress.Down, KeyPress.Down, KeyPress.Right, KeyPress.Space).Type("m").Press(KeyPress.Right, KeyPress.Right, KeyPress.Space).Type("dd");
        Golden.Check("explorer-marked-colour", room.Colours);
    }

    [Fact]
    public void Closer_and_wider()
    {
        using Room room = Opened();
        Assert.Equal(7, Frets(room));
        Assert.Equal(5, Frets(room.Type("z")));
        Assert.Equal(4, Frets(room.Type("zzz")));
        Assert.Equal(5, Frets(room.Type("w")));
        Assert.Equal(18, Frets(room.Type("wwwwwwww")));
        Assert.Equal(15, Frets(room.Type("z")));
    }

    [Fact]
    public void The_cursor_stays_in_sight_wherever_it_walks()
    {
        using Room room = Opened(60, 20);
        room.Type("z");
        for (int i = 0; i < 30; i++)
        {
            Assert.Matches(@"\[.\]", room.Press(KeyPress.Right).Screen);
        }

        for (int i = 0; i < 30; i++)
        {
            Assert.Matches(@"\[.\]", room.Press(KeyPress.Left).Screen);
        }
    }

    [Fact]
    public void What_stands_on_the_dots_is_turned_through()
    {
        using Room room = Opened();
        room.Press(KeyPress.Down, KeyPress.Down, KeyPress.Right, KeyPress.Space, KeyPress.Up);
        Assert.Contains("··●··", room.Screen);
        Assert.Contains("··1··", room.Type("d").Screen);
        Assert.Contains("··9··", room.Type("d").Screen);
        Assert.Contains("5○   ║", room.Screen);
        Assert.Contains("C#◆", room.Type("d").Press(KeyPress.Up).Screen);
        Assert.Contains("··●··", room.Type("d").Screen);
    }

    [Fact]
    public void The_board_stays_where_it_is_when_something_is_marked()
    {
        using Room room = Opened();
        string[] before = room.Screen.Split('\n')[2..10];
        Assert.Equal(before, room.Type("m").Screen.Split('\n')[2..10]);
    }

    [Fact]
    public void A_mark_that_goes_with_its_setup_says_so()
    {
        using Room room = Opened();
        Assert.DoesNotContain("The mark is off", room.Type("+").Screen);
        Assert.Contains("The mark is off", room.Type("m-").Screen);
        Assert.DoesNotContain("The mark is off", room.Press(KeyPress.Up).Screen);
        Assert.Contains("The mark is off", room.Type("mc").Press(KeyPress.Right, KeyPress.Enter).Screen);
    }

    [Fact]
    public void Without_a_full_capo_there_is_none_to_move_down()
    {
        using Room room = Opened();
        Assert.Contains("there is no full capo to move down", room.Type("-").Screen);
    }

    [Theory]
    [InlineData(60, 20)]
    [InlineData(80, 24)]
    public void Nothing_said_of_a_voicing_is_cut(int columns, int rows)
    {
        using Room room = Opened(columns, rows);
        for (int i = 0; i < 6; i++)
        {
            // Every string by another finger, too far for any hand.
            room.Press(KeyPress.Space, KeyPress.Down, KeyPress.Right, KeyPress.Right);
            Assert.DoesNotContain(room.Screen.Split('\n'), line => line.EndsWith('…'));
        }

        Assert.Contains("no hand for it", room.Screen);
    }

    [Fact]
    public void What_is_said_of_a_found_voicing_stands_in_full_beneath_the_list()
    {
        using Room room = Opened(60, 20);
        string screen = room.Type("fdm").Press(KeyPress.Enter).Screen;
        Assert.Contains("root in the\n bass; also without string", screen);
        Assert.NotEqual(screen.Split('\n')[^5], room.Press(KeyPress.Down).Screen.Split('\n')[^5]);
    }

    [Fact]
    public void While_a_setup_is_half_written_the_last_good_one_stays()
    {
        using Room room = Opened();
        string good = room.Type("c").Screen;
        string half = room.Press(KeyPress.Backspace).Screen;
        Assert.Contains("column ", half);
        string[] lines = half.Split('\n');
        Assert.Equal(good.Split('\n')[4..20], lines[(lines.Length - good.Split('\n').Length + 4)..20]);
    }

    // The numbers over the board.
    private static int Frets(Room room) => Regex.Count(room.Screen.Split('\n')[2], @"\d+");

    [Fact]
    public void Found_voicings_come_under_the_hand()
    {
        using Room room = Opened();
        room.Type("fdm").Press(KeyPress.Enter);
        room.Press(KeyPress.Enter);
        Assert.Contains("shape name     Dm", room.Screen);
    }

    [Fact]
    public void Clamps_are_chosen_with_what_they_give()
    {
        using Room room = Opened();
        room.Type("c").Press(KeyPress.Down, KeyPress.F(3));
        room.Press(KeyPress.Enter);
        Assert.Contains("standard + full@1 + 3-5@3", room.Screen);
    }

    [Fact]
    public void Clamps_are_set_with_the_arrows_and_what_cannot_be_is_said()
    {
        using Room room = Opened();
        room.Type("c").Press(KeyPress.Right, KeyPress.PageDown, KeyPress.F(6));
        Assert.Contains("setup: standard + 3-6@3", room.Screen);
        room.Press(KeyPress.PageDown, KeyPress.PageDown);
        Assert.Contains("the strings are 1 to 6", room.Screen);
        room.Press(KeyPress.F(5), KeyPress.F(7), KeyPress.F(9), KeyPress.F(9), KeyPress.F(8), KeyPress.Tab);
        Assert.DoesNotContain("the strings are", room.Screen);
        Golden.Check("setup-by-hand-80x24", room.Screen);
    }

    [Fact]
    public void Tuning_up()
    {
        using Room room = Opened();
        room.Type("tw3");
        Assert.Contains("1 right", room.Press(KeyPress.Up).Screen.Replace("0 of 1 right", "1 right", StringComparison.Ordinal));
    }
}
