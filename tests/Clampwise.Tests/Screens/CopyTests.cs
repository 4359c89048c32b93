using Clampwise.Fretboard;
using Clampwise.Terminal;
using Clampwise.Tests.Commands;

namespace Clampwise.Tests.Screens;

/// <summary>F9 hands the voicing on the page to the terminal's clipboard, as a command line takes it.</summary>
[Collection(nameof(TestTerminal))]
public class CopyTests
{
    [Fact]
    public void What_is_copied_from_the_explorer_reads_back_as_the_same_voicing()
    {
        using var room = new Room();
        room.Type("e").Press(KeyPress.Space, KeyPress.Down, KeyPress.Right, KeyPress.Space);
        Voicing held = room.Frame.Front.Copied!;
        var screen = new NotedScreen();
        room.Frame.Appear(screen);
        room.Frame.Press(KeyPress.F(9));
        string copied = Assert.Single(screen.Copied);
        string[] words = copied.Split('\'', StringSplitOptions.RemoveEmptyEntries);
        CommandRun named = CommandRun.Of("name", words[0], words[1].Trim());
        Assert.StartsWith($"{held.Fretting} in {held.Setup}", named.Out);
        Assert.Contains(room.Frame.Compose(80, 24)[23], text => text.Text.Contains($"clipboard: {copied}", StringComparison.Ordinal));
        room.Frame.Press(KeyPress.Right);
        Assert.DoesNotContain(room.Frame.Compose(80, 24)[23], text => text.Text.Contains("clipboard", StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_can_be_copied_while_it_is_asked()
    {
        using var room = new Room();
        room.Press(KeyPress.Enter);
        Assert.Null(room.Frame.Front.Copied);
        room.Type("k");
        Assert.NotNull(room.Frame.Front.Copied);
    }

    private sealed class NotedScreen : IScreen
    {
        public List<string> Copied { get; } = [];

        public void Redraw() { }

        public void Renew() { }

        public void Post(Action action) => action();

        public void Copy(string text) => Copied.Add(text);

        public void End() { }
    }
}
