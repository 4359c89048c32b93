using Clampwise.Fretboard;
using Clampwise.Screens;
using Clampwise.Terminal;

namespace Clampwise.Tests.Screens;

public class TitleTests
{
    [Fact]
    public void A_session_of_one_drill_bears_its_title_to_the_end_and_on_the_first_screen()
    {
        using var room = new Room();
        room.Type("d").Press(KeyPress.Down, KeyPress.Enter);
        Assert.Contains("Clampwise  Open major: strings 2, 3 and 4 clamped ", room.Screen);
        room.Press(KeyPress.Esc, KeyPress.Esc);
        Assert.Contains("Go on              Open major: strings 2, 3 and 4 clamped, 0:0", room.Screen);
        room.Press(KeyPress.Enter).Type("p").Type("e");
        Assert.Contains("Open major: strings 2, 3 and 4 clamped: done", room.Screen);
    }

    [Fact]
    public void The_daily_drill_keeps_its_name()
    {
        using var room = new Room();
        Assert.Contains("Clampwise  the daily drill ", room.Press(KeyPress.Enter).Screen);
    }

    [Fact]
    public void A_long_title_leaves_the_clock_in_sight_on_a_narrow_screen()
    {
        using var room = new Room(columns: 60, rows: 20);
        Assert.Contains("0 answered   15:00 left", room.Type("d").Press(KeyPress.Down, KeyPress.Enter).Screen);
    }

    [Fact]
    public void The_explorer_opens_on_a_fretting_that_is_given()
    {
        using var room = new Room();
        Setup setup = Setup.Parse("standard + 3-5@2").Value;
        room.Frame.Open(new ExplorerPage(room.Frame, room.Desk, setup) { Holds = Fretting.Parse("006400", setup).Value });
        Assert.Contains("shape name     D", room.Screen);
    }
}
