using Clampwise.Charts;
using Clampwise.Look;
using Clampwise.Terminal;

namespace Clampwise.Tests.Screens;

/// <summary>What goes to the terminal: what changed, and all of it where the terminal may have lost it.</summary>
[Collection(nameof(TestTerminal))]
public class CanvasTests
{
    [Fact]
    public void A_second_on_the_clock_sends_the_title_row_alone()
    {
        using var room = new Room();
        room.Press(KeyPress.Enter);
        Assert.Contains("Which chord", room.Sent);
        // A key that means nothing draws anew as the clock does.
        string sent = room.After(1).Press(KeyPress.F(12)).Sent;
        Assert.Contains("14:59", sent);
        Assert.DoesNotContain("Which chord", sent);
        Assert.InRange(sent.Length, 1, 200);
    }

    [Fact]
    public void Another_size_or_theme_sends_everything()
    {
        using var room = new Room(theme: Theme.Own);
        room.Press(KeyPress.Enter);
        Assert.Contains("Which chord", room.Sent);
        Assert.Contains("Which chord", room.Resize(81, 24).Sent);
        room.Frame.Wear(Theme.Own, GlyphSet.Unicode);
        Assert.Contains("Which chord", room.Sent);
    }
}
