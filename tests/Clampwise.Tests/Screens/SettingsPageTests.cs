using Clampwise.Charts;
using Clampwise.Look;
using Clampwise.Screens;
using Clampwise.Settings;
using Clampwise.Terminal;

namespace Clampwise.Tests.Screens;

[Collection(nameof(TestTerminal))]
public class SettingsPageTests
{
    [Fact]
    public void Screens_in_ascii_and_in_colour()
    {
        using var ascii = new Room(glyphs: GlyphSet.Ascii);
        Assert.All(ascii.Type("s").Screen, sign => Assert.InRange(sign, '\n', '~'));
        using var dark = new Room(theme: ThemeBook.Shipped["dark"]);
        Golden.Check("settings-colour", dark.Type("s").Colours);
    }

    [Fact]
    public void An_arrow_changes_at_once_and_the_file_has_it()
    {
        using var room = new Room();
        room.Type("s").Press(KeyPress.Right);
        Assert.Equal(20.0, room.Desk.Settings.SessionLength.TotalMinutes);
        Assert.Equal("[session]\nminutes = 20\n", File.ReadAllText(room.Settings.File.Path));
        Assert.Contains("20 minutes:", room.Press(KeyPress.Esc).Screen);
    }

    [Fact]
    public void Every_setting_can_be_changed_with_keys_and_put_back()
    {
        using var room = new Room();
        room.Type("s");
        foreach (Setting setting in SettingList.All)
        {
            string usual = setting.Write(room.Settings.Now);
            room.Press(KeyPress.Right);
            if (setting.Write(room.Settings.Now) == usual)
            {
                room.Press(KeyPress.Enter).Type("Abc 1").Press(KeyPress.Enter);
            }

            Assert.NotEqual(usual, setting.Write(room.Settings.Now));
            Assert.Equal(setting.Write(room.Settings.Now), setting.Write(SettingsReading.Of(File.ReadAllText(room.Settings.File.Path), "x").Settings));
            room.Type("u").Press(KeyPress.Down);
            Assert.Equal(usual, setting.Write(room.Settings.Now));
        }

        Assert.IsType<TodayPage>(room.Press(KeyPress.Esc).Frame.Front);
    }

    [Fact]
    public void A_value_can_be_typed_and_a_wrong_one_says_what_is_right()
    {
        using var room = new Room();
        room.Type("s1").Type("x").Press(KeyPress.Enter);
        Assert.Contains("expected a whole number from 1 to 120, found 1x", room.Screen);
        Assert.True(room.Frame.Front.IsTyping);
        room.Press(KeyPress.Backspace).Type("8").Press(KeyPress.Enter);
        Assert.Equal(18.0, room.Settings.Now.SessionLength.TotalMinutes);
        room.Press(KeyPress.Enter).Press(KeyPress.Backspace).Press(KeyPress.Esc);
        Assert.Equal(18.0, room.Settings.Now.SessionLength.TotalMinutes);
        Assert.IsType<SettingsPage>(room.Frame.Front);
    }

    // Quotes belong to the file, not to what is typed here.
    [Theory]
    [InlineData("session.day-start", "25", "expected a time of the day from 00:00 to 23:59, found 25")]
    [InlineData("guitar.clamps", "abc", "expected how many strings each clamp holds, such as 3 or 3, 5; nothing for whatever a drill asks for, found abc")]
    [InlineData("guitar.hand", "huge", "expected small, medium, large, or the span from index to little finger in millimetres, 50 to 180, found huge")]
    public void What_is_said_of_a_typed_value_has_no_quotes(string key, string typed, string words)
    {
        using var room = new Room(120, 40);
        room.Type("s");
        GoTo(room, key);
        room.Press(KeyPress.Enter).Press([.. Enumerable.Repeat(KeyPress.Backspace, 20)]);
        string said = string.Join(' ', room.Type(typed).Press(KeyPress.Enter).Screen.Split('\n').Select(line => line.Trim()));
        Assert.Contains(words, said);
        Assert.DoesNotContain("\"", said);
    }

    [Fact]
    public void A_key_that_does_nothing_is_not_offered()
    {
        using var room = new Room(120, 40);
        room.Type("s");
        GoTo(room, "sound.device");
        Assert.DoesNotContain("Left Right", room.Screen);
        GoTo(room, "sound.latency");
        Assert.Contains("Left Right", room.Screen);
    }

    [Fact]
    public void A_question_mark_is_typed_while_typing_and_is_help_otherwise()
    {
        using var room = new Room();
        room.Type("s");
        GoTo(room, "sound.device");
        room.Press(KeyPress.Enter).Type("a?").Press(KeyPress.Enter);
        Assert.Equal("a?", room.Settings.Now.Sound.Device);
        Assert.IsType<HelpPage>(room.Type("?").Frame.Front);
    }

    [Fact]
    public void The_look_changes_under_the_players_eyes()
    {
        using var room = new Room();
        room.Type("s");
        Assert.Contains("───", room.Screen);
        GoTo(room, "screen.glyphs");
        room.Press(KeyPress.Right, KeyPress.Right);
        Assert.DoesNotContain("───", room.Screen);
        GoTo(room, "screen.theme");
        Assert.DoesNotContain("48;2;15;20;25", room.Colours);
        room.Press(KeyPress.Right);
        Assert.Contains("48;2;15;20;25", room.Colours);
    }

    [Fact]
    public void Fretboards_turn_and_show_fingers_from_the_next_question_on()
    {
        using var room = new Room(80, 40);
        room.Type("s");
        GoTo(room, "guitar.fretboard");
        room.Press(KeyPress.Right);
        GoTo(room, "guitar.dots");
        room.Press(KeyPress.Right, KeyPress.Esc, KeyPress.Enter);
        Golden.Check("question-upright-fingers", room.Screen);
    }

    [Fact]
    public void The_device_opens_anew_once_on_leaving_or_to_play()
    {
        using var room = new Room();
        room.Type("s");
        GoTo(room, "sound.latency");
        room.Press(KeyPress.Right, KeyPress.Right);
        Assert.Empty(room.Opened);
        room.Type("p").Type("p");
        Assert.Equal([50.0], room.Opened.Select(sound => sound.Latency.TotalMilliseconds));
        Assert.Equal(2, Assert.Single(room.Played).Played.Count);
        room.Press(KeyPress.Left, KeyPress.Esc);
        Assert.Equal([50.0, 45.0], room.Opened.Select(sound => sound.Latency.TotalMilliseconds));
    }

    [Fact]
    public void Memory_is_worked_out_anew_once_on_leaving()
    {
        using var room = new Room();
        room.Type("s");
        GoTo(room, "memory.retention");
        room.Press(KeyPress.Left, KeyPress.Left);
        Assert.Empty(room.Remembered);
        room.Press(KeyPress.Esc);
        Assert.Equal(0.88, Assert.Single(room.Remembered).DesiredRetention, 9);
    }

    [Fact]
    public void Minutes_of_the_command_line_hold_until_they_are_changed()
    {
        using var room = new Room(given: TimeSpan.FromMinutes(5));
        room.Type("s");
        GoTo(room, "guitar.left-handed");
        room.Press(KeyPress.Right);
        Assert.Equal(5.0, room.Desk.Settings.SessionLength.TotalMinutes);
        room.Press(KeyPress.Home, KeyPress.Right);
        Assert.Equal(20.0, room.Desk.Settings.SessionLength.TotalMinutes);
    }

    [Fact]
    public void A_broken_file_is_said_on_the_first_screen_and_in_the_settings()
    {
        using var room = new Room(settingsFile: "[session]\nminutes = 0\n");
        Assert.Contains("settings.toml, line 2, column 11", room.Screen);
        Assert.Contains("settings.toml, line 2, column 11", room.Type("s").Screen);
        Assert.DoesNotContain("settings.toml, line 2", room.Press(KeyPress.Right).Screen);
    }

    [Fact]
    public void On_a_small_screen_blank_lines_go_first_and_then_the_picture()
    {
        using var silent = new Room(60, 20, isAudible: false);
        Assert.Contains("no sound here", silent.Screen);
        Assert.Contains("6 E2", silent.Screen);
        using var room = new Room(60, 20, isAudible: false, settingsFile: "[session]\nminutes = 0\nhue = 1\n");
        Assert.Contains("(1 of 2) settings.toml, line 2, column 11", room.Screen);
        Assert.Contains("no sound here", room.Screen);
        Assert.Contains("Clamp for the first question", room.Screen);
    }

    // What the file says and what holds must agree after any keys, in any size.
    [Fact]
    public void Random_keys_and_sizes_break_nothing()
    {
        using var room = new Room();
        var random = new Random(20260302);
        KeyPress[] keys = [KeyPress.Up, KeyPress.Down, KeyPress.Left, KeyPress.Right, KeyPress.Enter, KeyPress.Space, KeyPress.Backspace, KeyPress.Home, KeyPress.End, KeyPress.PageUp, KeyPress.PageDown, KeyPress.Tab, KeyPress.F(1), KeyPress.Delete, KeyPress.Of('u'), KeyPress.Of('p'), KeyPress.Of('7'), KeyPress.Of('.'), KeyPress.Of('"'), KeyPress.Of('é'), KeyPress.Of('#')];
        for (int i = 0; i < 3_000; i++)
        {
            if (room.Frame.Front is TodayPage)
            {
                room.Type("s");
            }

            room.Press(i % 40 == 0 ? KeyPress.Esc : keys[random.Next(keys.Length)]);
            if (i % 50 == 0)
            {
                _ = room.Resize(random.Next(20, 140), random.Next(5, 50)).Screen;
            }
        }

        SettingsReading read = room.Settings.File.Load();
        Assert.Empty(read.Faults);
        Assert.Equal(SettingsText.Of(room.Settings.Now), SettingsText.Of(read.Settings));
    }

    private static void GoTo(Room room, string key)
    {
        room.Press(KeyPress.Home);
        for (int i = 0; SettingList.All[i].Key != key; i++)
        {
            room.Press(KeyPress.Down);
        }
    }
}
