using Clampwise.Charts;
using Clampwise.Terminal;

namespace Clampwise.Tests.Screens;

[Collection(nameof(TestTerminal))]
public class DrillsPageTests
{
    [Fact]
    public void What_lies_above_and_below_is_counted()
    {
        using var room = new Room(60, 20);
        int all = room.Desk.Shelf.Drills.Length;
        Assert.Contains($"{all - 4} more below", room.Type("d").Screen);
        Assert.DoesNotContain("above", room.Screen);
        room.Press(KeyPress.Down, KeyPress.Down, KeyPress.Down, KeyPress.Down);
        Assert.Contains($"1 more above, {all - 5} more below", room.Screen);
        for (int i = 0; i < all; i++)
        {
            room.Press(KeyPress.Down);
        }

        Assert.Contains($"{all - 4} more above", room.Screen);
        Assert.DoesNotContain("below", room.Screen);
    }

    [Theory]
    [InlineData(60, 20)]
    [InlineData(80, 24)]
    public void What_is_said_of_a_drill_is_never_cut(int columns, int rows)
    {
        using var room = new Room(columns, rows, settingsFile: "[guitar]\nclamps = \"3\"\n");
        room.Desk.Use(room.Settings.Now, GlyphSet.Ascii);
        room.Type("d");
        Assert.Contains("comes next", room.Screen);
        Assert.Contains("not open yet", room.Screen);
        room.Press([.. Enumerable.Repeat(KeyPress.Down, 8)]);
        Assert.Contains("takes another clamp", room.Screen);
    }
}
