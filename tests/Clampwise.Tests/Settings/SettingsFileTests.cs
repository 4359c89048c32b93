using Clampwise.Settings;
using Clampwise.Storage;

namespace Clampwise.Tests.Settings;

public class SettingsFileTests
{
    private static readonly Setting s_minutes = SettingList.Find("session.minutes")!;
    private static readonly PlayerSettings s_twenty = PlayerSettings.Usual with { SessionLength = TimeSpan.FromMinutes(20) };
    private static readonly Setting s_theme = SettingList.Find("screen.theme")!;

    [Theory]
    [InlineData("", "[session]\nminutes = 20\n")]
    [InlineData("# mine ♯\n[session] # here\nminutes=15   # a quarter\nnames = \"typed\"\n", "# mine ♯\n[session] # here\nminutes=20   # a quarter\nnames = \"typed\"\n")]
    [InlineData("[session]\nminutes = \"oops\"\n", "[session]\nminutes = 20\n")]
    [InlineData("[session]\nnames = \"typed\"\n\n# looks\n[screen]\ntheme = \"dark\"\n", "[session]\nnames = \"typed\"\nminutes = 20\n\n# looks\n[screen]\ntheme = \"dark\"\n")]
    [InlineData("[session]\n# nothing yet\n[screen]\n", "[session]\nminutes = 20\n# nothing yet\n[screen]\n")]
    [InlineData("[session]", "[session]\nminutes = 20\n")]
    [InlineData("[session]\r\nnames = \"typed\"\r\n", "[session]\r\nnames = \"typed\"\r\nminutes = 20\r\n")]
    [InlineData("session.names = \"typed\"\n[screen]\n", "session.names = \"typed\"\nsession.minutes = 20\n[screen]\n")]
    [InlineData("session = { minutes = 15 } # inline\n", "session = { minutes = 20 } # inline\n")]
    [InlineData("[screen]\ntheme = \"dark\"\nmystery = 1\n", "[screen]\ntheme = \"dark\"\nmystery = 1\n\n[session]\nminutes = 20\n")]
    public void One_value_is_put_in_and_all_else_stays(string before, string after)
    {
        using ScratchFolder folder = new ScratchFolder().With("settings.toml", before);
        Assert.Null(SettingsFile.In(folder.Data).Save(s_minutes, s_twenty));
        Assert.Equal(after, File.ReadAllText(folder.Settings));
        Assert.Equal(20.0, SettingsReading.Of(after, "x").Settings.SessionLength.TotalMinutes);
    }

    [Theory]
    [InlineData("[session]\nminutes = \n", "not saved, since the file does not read: mend it first (line 2:")]
    [InlineData("session = { names = \"typed\" }\n", "not saved: write session.minutes = 20 into the file yourself")]
    [InlineData("session = 3\n", "not saved: write session.minutes = 20 into the file yourself")]
    public void Where_no_value_can_be_put_the_file_is_left_alone(string before, string words)
    {
        using ScratchFolder folder = new ScratchFolder().With("settings.toml", before);
        Assert.StartsWith(words, SettingsFile.In(folder.Data).Save(s_minutes, s_twenty)!.Message);
        Assert.Equal(before, File.ReadAllText(folder.Settings));
    }

    [Fact]
    public void Without_a_file_the_usual_settings_hold_and_none_is_made()
    {
        using var folder = new ScratchFolder();
        SettingsFile file = SettingsFile.In(folder.Data);
        Assert.Equal(PlayerSettings.Usual, file.Load().Settings);
        Assert.Empty(file.Load().Faults);
        Assert.False(file.Exists);
    }

    [Fact]
    public void Usual_settings_are_written_once_and_never_over_a_file()
    {
        using var folder = new ScratchFolder();
        SettingsFile file = SettingsFile.In(folder.Data);
        Assert.Null(file.WriteUsual());
        string written = File.ReadAllText(file.Path);
        Assert.Empty(file.Load().Faults);
        Assert.All(SettingList.All, setting => Assert.Contains($"{setting.Name} = {setting.Write(PlayerSettings.Usual)}\n", written));
        File.AppendAllText(file.Path, "# mine\n");
        Assert.Contains("is there already, and is left as it is", file.WriteUsual()!.Message);
        Assert.Equal(written + "# mine\n", File.ReadAllText(file.Path));
        Assert.Equal([file.Path], Directory.GetFileSystemEntries(folder.Root));
    }

    [Theory]
    [InlineData("[screen]\nwelcome = true\n", true)]
    [InlineData("screen.welcome = true\n", true)]
    [InlineData("[screen]\ntheme = \"dark\"\n", false)]
    [InlineData("", false)]
    public void A_file_tells_what_it_names_itself(string text, bool isNamed)
    {
        using ScratchFolder folder = new ScratchFolder().With("settings.toml", text);
        Assert.Equal(isNamed, SettingsFile.In(folder.Data).Names("screen.welcome"));
    }

    [Fact]
    public void A_change_holds_at_once_and_after_the_next_start()
    {
        using ScratchFolder folder = new ScratchFolder().With("settings.toml", "# mine\n[screen]\nglyphs = \"ascii\" # for the old one\n");
        var keeper = new SettingsKeeper(SettingsFile.In(folder.Data));
        var changes = new List<(string Before, string After)>();
        keeper.Changed += (before, after) => changes.Add((before.Theme, after.Theme));
        Assert.Null(keeper.Change(s_theme, s_theme.Step(keeper.Now, 1)));
        Assert.Equal([("own", "dark")], changes);
        Assert.Equal("dark", keeper.Now.Theme);
        Assert.Equal(("dark", GlyphChoice.Ascii), (SettingsFile.In(folder.Data).Load().Settings.Theme, SettingsFile.In(folder.Data).Load().Settings.Glyphs));
        Assert.StartsWith("# mine\n[screen]\nglyphs = \"ascii\" # for the old one\n", File.ReadAllText(folder.Settings));
    }

    [Fact]
    public void A_change_to_a_file_that_does_not_read_holds_for_this_run_and_is_said()
    {
        using ScratchFolder folder = new ScratchFolder().With("settings.toml", "[screen\n");
        var keeper = new SettingsKeeper(SettingsFile.In(folder.Data));
        Assert.NotEmpty(keeper.Faults);
        Assert.Contains("mend it first", keeper.Change(s_theme, s_theme.Step(keeper.Now, 1))!.Message);
        Assert.Equal("dark", keeper.Now.Theme);
        Assert.Equal("[screen\n", File.ReadAllText(folder.Settings));
    }

    [Fact]
    public void Mending_the_one_broken_value_clears_its_fault()
    {
        using ScratchFolder folder = new ScratchFolder().With("settings.toml", "[screen]\ntheme = 7\n");
        var keeper = new SettingsKeeper(SettingsFile.In(folder.Data));
        Assert.Single(keeper.Faults);
        Assert.Null(keeper.Change(s_theme, s_theme.Step(keeper.Now, 1)));
        Assert.Empty(keeper.Faults);
    }

    [UnixFact]
    public void A_link_to_a_file_elsewhere_stays_a_link()
    {
        using ScratchFolder folder = new ScratchFolder().With("elsewhere.toml", "[screen]\ntheme = \"light\"\n");
        File.CreateSymbolicLink(folder.Settings, Path.Combine(folder.Root, "elsewhere.toml"));
        Assert.Null(SettingsFile.In(folder.Data).Save(s_theme, PlayerSettings.Usual));
        Assert.NotNull(new FileInfo(folder.Settings).LinkTarget);
        Assert.Equal("[screen]\ntheme = \"own\"\n", File.ReadAllText(Path.Combine(folder.Root, "elsewhere.toml")));
    }

    [Fact]
    public void A_file_that_cannot_be_opened_is_a_fault_and_the_usual_settings_hold()
    {
        using var folder = new ScratchFolder();
        using (var held = new FileStream(folder.Settings, FileMode.Create, FileAccess.Write, FileShare.None))
        {
            SettingsReading read = SettingsFile.In(folder.Data).Load();
            Assert.Contains("could not be read", Assert.Single(read.Faults).Message);
            Assert.Equal(PlayerSettings.Usual, read.Settings);
        }
    }
}
