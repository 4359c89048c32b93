using Clampwise.Charts;
using Clampwise.Fretboard;
using Clampwise.Settings;
using CsCheck;
using Tomlyn;
using Tomlyn.Model;

namespace Clampwise.Tests.Settings;

public class SettingsReadingTests
{
    [Fact]
    public void Every_setting_is_read_from_its_place()
    {
        SettingsReading read = SettingsReading.Of(
            """
            [session]
            minutes = 20
            names = "typed"
            day-start = "05:30"
            [memory]
            retention = 0.85
            same-day = false
            [guitar]
            clamps = "3, 5"
            hand = 98
            in-hand = false
            left-handed = true
            fretboard = "upright"
            dots = "fingers"
            frets = "clamp"
            [screen]
            welcome = false
            theme = "dark"
            glyphs = "ascii"
            [sound]
            on = false
            latency = 60
            device = "hw:1"
            soundfont = "/sounds/guitar.sf2"
            preset = "0:25"
            a4 = 442
            strum = 120
            pick-position = 0.2
            pick-hardness = 1
            strength = 0.5
            """,
            "settings.toml");
        Assert.Empty(read.Faults);
        PlayerSettings s = read.Settings;
        Assert.Equal((20.0, false, new TimeOnly(5, 30)), (s.SessionLength.TotalMinutes, s.OffersNames, s.DayStart));
        Assert.Equal((0.85, false), (s.Memory.DesiredRetention, s.Memory.CountsSameDay));
        Assert.Equal((98.0, new FretboardStyle(true, true, FretCount.Clamp), DotSign.Fingers), (s.Hand.SpanMillimetres, s.Fretboard, s.Dots));
        Assert.Equal(("dark", GlyphChoice.Ascii), (s.Theme, s.Glyphs));
        Assert.Equal((false, 60.0, "hw:1", "/sounds/guitar.sf2", "0:25"), (s.Sound.IsOn, s.Sound.Latency.TotalMilliseconds, s.Sound.Device, s.Sound.SoundFontPath, s.Sound.SoundFontPreset));
        Assert.Equal((442.0, 120.0), (s.Style.ConcertPitch.A4Hertz, s.Style.StrumTime.TotalMilliseconds));
        Assert.Equal((0.2, 1.0, 0.5), (s.Style.Pick.Position, s.Style.Pick.Hardness, s.Style.Strength.Value));
        Assert.All(SettingList.All, setting => Assert.NotEqual(setting.Write(PlayerSettings.Usual), setting.Write(s)));
    }

    [Theory]
    [InlineData("session.minutes = 25\nsession.names = \"typed\"")]
    [InlineData("session = { minutes = 25, names = \"typed\" }")]
    [InlineData("[session]\n\"minutes\" = 25 # a comment\n'names' = 'typed'")]
    [InlineData("[session]\r\nminutes = 0x19\r\nnames = \"\"\"typed\"\"\"\r\n")]
    public void Every_way_that_toml_writes_it_is_read(string text)
    {
        SettingsReading read = SettingsReading.Of(text, "settings.toml");
        Assert.Empty(read.Faults);
        Assert.Equal((25.0, false), (read.Settings.SessionLength.TotalMinutes, read.Settings.OffersNames));
    }

    [Theory]
    [InlineData("[session]\nminutes = 0", "settings.toml, line 2, column 11: session.minutes: expected a whole number from 1 to 120, found 0")]
    [InlineData("[session]\nminutes = 121", "settings.toml, line 2, column 11: session.minutes: expected a whole number from 1 to 120, found 121")]
    [InlineData("[session]\nminutes = 15.0", "settings.toml, line 2, column 11: session.minutes: expected a whole number from 1 to 120, found 15.0")]
    [InlineData("[session]\nminutes = \"15\"", "settings.toml, line 2, column 11: session.minutes: expected a whole number from 1 to 120, found \"15\"")]
    [InlineData("[session]\n  names = \"choose\"", "settings.toml, line 2, column 11: session.names: expected one of \"chosen\", \"typed\", found \"choose\"")]
    [InlineData("[session]\nday-start = \"24:00\"", "settings.toml, line 2, column 13: session.day-start: expected a time of the day in quotes, from \"00:00\" to \"23:59\", found \"24:00\"")]
    [InlineData("[memory]\nretention = 0.98", "settings.toml, line 2, column 13: memory.retention: expected a number from 0.7 to 0.97, found 0.98")]
    [InlineData("[memory]\nsame-day = 1", "settings.toml, line 2, column 12: memory.same-day: expected true or false, found 1")]
    [InlineData("[memory]\nretention = nan", "settings.toml, line 2, column 13: memory.retention: expected a number from 0.7 to 0.97, found NaN")]
    [InlineData("[guitar]\nhand = 40", "settings.toml, line 2, column 8: guitar.hand: expected \"small\", \"medium\", \"large\", or the span from index to little finger in millimetres, 50 to 180, found 40")]
    [InlineData("[guitar]\nhand = [1]", "settings.toml, line 2, column 8: guitar.hand: expected \"small\", \"medium\", \"large\", or the span from index to little finger in millimetres, 50 to 180, found [1]")]
    [InlineData("[screen]\ntheme = \"blue\"", "settings.toml, line 2, column 9: screen.theme: expected one of \"own\", \"dark\", \"light\", \"plain\", found \"blue\"")]
    [InlineData("[sound]\nlatency = 19", "settings.toml, line 2, column 11: sound.latency: expected a whole number from 20 to 100, found 19")]
    [InlineData("[sound]\ndevice = \"a\\tb\"", "settings.toml, line 2, column 10: sound.device: expected a text of one line in quotes; \"\" for the system's own, found \"a\\tb\"")]
    [InlineData("[sound]\nvolume = 3", "settings.toml, line 2, column 1: there is no setting 'sound.volume': [sound] has on, latency, device, soundfont, preset, a4, strum, pick-position, pick-hardness, strength")]
    [InlineData("minutes = 3", "settings.toml, line 1, column 1: there is no setting 'minutes': expected a table [session], [memory], [guitar], [screen], [sound] with its keys beneath")]
    [InlineData("[sesion]\n", "settings.toml, line 1, column 1: there is no setting 'sesion': expected a table [session], [memory], [guitar], [screen], [sound] with its keys beneath")]
    [InlineData("session = 3", "settings.toml, line 1, column 1: there is no setting 'session': expected a table [session], [memory], [guitar], [screen], [sound] with its keys beneath")]
    [InlineData("[[session]]\nminutes = 15", "settings.toml, line 1, column 1: [[session]] is a list of tables: write [session] once")]
    public void A_fault_says_where_what_and_what_would_be_right(string text, string words)
    {
        SettingsReading read = SettingsReading.Of(text, "settings.toml");
        Assert.Equal([words], read.Faults.Select(fault => fault.Message));
        Assert.Equal(SettingsText.Of(PlayerSettings.Usual), SettingsText.Of(read.Settings));
    }

    [Fact]
    public void A_broken_key_leaves_the_others_in_force_and_all_faults_show_in_order()
    {
        SettingsReading read = SettingsReading.Of("[session]\nminutes = 999\nnames = \"typed\"\n[sound]\na4 =\nstrum = 200\nhue = 1\n", "settings.toml");
        Assert.Equal(3, read.Faults.Length);
        Assert.StartsWith("settings.toml, line 2, column 11: session.minutes", read.Faults[0].Message);
        Assert.StartsWith("settings.toml, line 5, column 5: ", read.Faults[1].Message);
        Assert.StartsWith("settings.toml, line 7, column 1: there is no setting 'sound.hue'", read.Faults[2].Message);
        Assert.Equal((15.0, false, 200.0, 440.0), (read.Settings.SessionLength.TotalMinutes, read.Settings.OffersNames, read.Settings.Style.StrumTime.TotalMilliseconds, read.Settings.Style.ConcertPitch.A4Hertz));
    }

    [Fact]
    public void A_key_that_stands_twice_is_a_fault_and_the_first_holds()
    {
        SettingsReading read = SettingsReading.Of("[session]\nminutes = 20\nminutes = 30\n", "settings.toml");
        Assert.StartsWith("settings.toml, line 3, column 1: ", Assert.Single(read.Faults).Message);
        Assert.Equal(20.0, read.Settings.SessionLength.TotalMinutes);
    }

    // A general-purpose TOML reader must find in the text what was written: the library's own model, not our reading of its tree.
    [Fact]
    public void What_is_written_in_full_reads_back_whatever_was_set() => Some.Holds(settings =>
    {
        string text = SettingsText.Of(settings);
        SettingsReading read = SettingsReading.Of(text, "settings.toml");
        Assert.Empty(read.Faults);
        Assert.All(SettingList.All, setting => Assert.Equal(setting.Write(settings), setting.Write(read.Settings)));
        TomlTable model = TomlSerializer.Deserialize<TomlTable>(text)!;
        Assert.Equal(settings.SessionLength.TotalMinutes, (long)((TomlTable)model["session"])["minutes"]);
        Assert.Equal(settings.Sound.Device ?? "", ((TomlTable)model["sound"])["device"]);
        Assert.Equal(settings.Memory.DesiredRetention, (double)((TomlTable)model["memory"])["retention"], 9);
    }, count: 300);

    [Fact]
    public void Arrows_change_every_setting_that_is_no_text_and_stay_within_its_range() => Assert.All(SettingList.All, setting =>
    {
        foreach (int by in (int[])[1, -1])
        {
            PlayerSettings settings = PlayerSettings.Usual;
            HashSet<string> seen = [setting.Write(settings)];
            for (int i = 0; i < 200; i++)
            {
                settings = setting.Step(settings, by);
                seen.Add(setting.Write(settings));
                Assert.Empty(SettingsReading.Of($"{setting.Key} = {setting.Write(settings)}", "x").Faults);
            }

            Assert.True(seen.Count > 1 || setting.Key is "sound.device" or "sound.soundfont" or "sound.preset", setting.Key);
        }
    });

    [Theory]
    [InlineData("session.minutes", 1, "20")]
    [InlineData("session.minutes", -1, "10")]
    [InlineData("session.names", 1, "\"typed\"")]
    [InlineData("session.day-start", -1, "\"03:30\"")]
    [InlineData("memory.retention", 1, "0.91")]
    [InlineData("guitar.hand", 1, "\"large\"")]
    [InlineData("guitar.hand", -1, "\"small\"")]
    [InlineData("screen.theme", -1, "\"plain\"")]
    [InlineData("sound.a4", 1, "441.0")]
    [InlineData("sound.strength", 1, "0.75")]
    public void An_arrow_goes_to_the_next_value(string key, int by, string written) =>
        Assert.Equal(written, SettingList.Find(key)!.Write(SettingList.Find(key)!.Step(PlayerSettings.Usual, by)));

    [Fact]
    public void From_between_two_sizes_the_arrow_goes_to_the_next_size()
    {
        Setting hand = SettingList.Find("guitar.hand")!;
        PlayerSettings between = PlayerSettings.Usual with { Hand = Hand.OfSpan(98).Value };
        Assert.Equal("\"medium\"", hand.Write(hand.Step(between, 1)));
        Assert.Equal("\"small\"", hand.Write(hand.Step(between, -1)));
    }

    // A seeded walk through all settings, by arrows, and texts of any kind where texts may stand.
    private static Gen<PlayerSettings> Some => Gen.Select(Gen.Int[-30, 30].Array[SettingList.All.Length], Gen.String, (steps, text) =>
    {
        PlayerSettings settings = PlayerSettings.Usual;
        for (int i = 0; i < steps.Length; i++)
        {
            for (int n = 0; n < Math.Abs(steps[i]); n++)
            {
                settings = SettingList.All[i].Step(settings, Math.Sign(steps[i]));
            }
        }

        string shown = string.Concat(text.Where(sign => !char.IsControl(sign) && !char.IsSurrogate(sign))).Trim();
        return settings with { Sound = settings.Sound with { Device = shown.Length == 0 ? null : shown } };
    });
}
