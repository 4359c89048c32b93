using Clampwise.Practice;
using Clampwise.Screens;
using Clampwise.Screens.Session;
using Clampwise.Sound.Players;
using Clampwise.Terminal;

namespace Clampwise.Tests.Screens;

[Collection(nameof(TestTerminal))]
public class WelcomePageTests
{
    [Fact]
    public void A_clamp_is_picked_and_heard_three_questions_answered_and_it_never_comes_again()
    {
        using var room = new Room(welcomes: true);
        room.Press(KeyPress.Down, KeyPress.Down, KeyPress.Enter);
        Assert.Contains("guitar]\nclamps = \"5\"", File.ReadAllText(room.Settings.File.Path));
        Assert.Contains("standard + 1-5@2", room.Desk.Repertoire.Drills.Single().Setup.ToString());
        Assert.Single(((CapturedOut)room.Sound).Played);

        room.Press(KeyPress.Enter);
        for (int question = 0; question < 3; question++)
        {
            Assert.IsType<SessionPage>(room.Frame.Front);
            room.After(2).Type("k").Press(KeyPress.Enter);
        }

        Assert.IsType<SummaryPage>(room.Frame.Front);
        Assert.Equal(3, room.Log.Attempts.Count());
        Assert.All(room.Log.Attempts, attempt => Assert.Contains("1-5@2", attempt.Item.ToString()));
        Assert.Contains("Hands:", room.Press(KeyPress.Enter).Screen);
        room.Press(KeyPress.Enter);
        Assert.IsType<TodayPage>(room.Frame.Front);
        Assert.False(room.Settings.Now.ShowsWelcome);
        Assert.Contains("standard + 1-5@2", room.Screen);
    }

    [Fact]
    public void It_can_be_skipped_but_the_cautions_are_shown()
    {
        using var room = new Room(welcomes: true);
        Assert.Contains("Strings and clamp:", room.Press(KeyPress.Esc).Screen);
        Assert.True(room.Settings.Now.ShowsWelcome);
        room.Press(KeyPress.Esc);
        Assert.IsType<TodayPage>(room.Frame.Front);
        Assert.False(room.Settings.Now.ShowsWelcome);
        Assert.Equal(OwnClamps.Any, room.Settings.Now.Clamps);
        Assert.Empty(room.Log.Attempts);
    }

    [Fact]
    public void Questions_put_down_wait_on_the_first_screen()
    {
        using var room = new Room(welcomes: true);
        room.Press(KeyPress.Enter, KeyPress.Enter, KeyPress.Esc, KeyPress.Esc);
        Assert.Contains("Hands:", room.Screen);
        Assert.Contains("Go on", room.Press(KeyPress.Enter).Screen);
    }

    [Fact]
    public void Without_sound_it_says_so_and_asks_what_can_be_seen()
    {
        using var room = new Room(isAudible: false, welcomes: true);
        Assert.Contains("no questions for the ear", room.Press(KeyPress.Enter).Screen);
        room.Press(KeyPress.Enter);
        Assert.Contains("3 to come", room.Screen);
    }

    [Fact]
    public void Clamps_that_no_drill_takes_are_named_on_the_first_screen()
    {
        using var room = new Room(columns: 100);
        room.Desk.Use(room.Desk.Settings with { Clamps = OwnClamps.Of(2) });
        Assert.Contains("clamps over 2 strings", room.Screen);
        Assert.Contains("There is no drill to practise.", room.Press(KeyPress.Enter).Screen);
        Assert.Contains("takes another clamp", room.Type("d").Screen);
    }
}
