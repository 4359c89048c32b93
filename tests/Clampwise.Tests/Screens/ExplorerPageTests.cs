using Clampwise.Fretboard;
using Clampwise.Screens;
using Terminal.Gui.Input;

namespace Clampwise.Tests.Screens;

[Collection(nameof(TestTerminal))]
public class ExplorerPageTests
{
    [Theory]
    [InlineData(60, 20)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Walking_on_the_fretboard(int columns, int rows)
    {
        using var terminal = new Room(columns, rows);
        terminal.Shell.Open(new ExplorerPage(terminal.Shell, terminal.Desk, Setup.Parse("standard + 2-4@2").Value));
        terminal.Press(Key.CursorDown, Key.CursorDown, Key.CursorDown, Key.CursorRight, Key.Space).Type("x").Press(Key.Space);
        Golden.Check($"explorer-{columns}x{rows}", terminal.Screen);
    }
}
