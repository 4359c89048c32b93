using System.Text.Json;
using Clampwise.Settings;

namespace Clampwise.Tests.Commands;

public class SettingsCommandTests
{
    [Fact]
    public void What_holds_is_listed_a_line_each()
    {
        using ScratchFolder folder = new ScratchFolder().With("settings.toml", "[session]\nminutes = 20\n");
        CommandRun run = CommandRun.Of("settings", "--data", folder.Root);
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Equal(SettingList.All.Length + 1, run.Lines.Length);
        Assert.Equal("session.minutes       20           (default 15) How long the daily drill lasts, on a clock that you can stop.", run.Lines[1]);
    }

    [Fact]
    public void Json_has_typed_values()
    {
        using ScratchFolder folder = new ScratchFolder().With("settings.toml", "[sound]\ndevice = 'a \"b\" \\ c'\na4 = 442\n");
        CommandRun run = CommandRun.Of("settings", "--json", "--data", folder.Root);
        var rows = run.Lines.Select(line => JsonDocument.Parse(line).RootElement).ToDictionary(row => row.GetProperty("key").GetString()!);
        Assert.Equal(SettingList.All.Length, rows.Count);
        Assert.Equal(15, rows["session.minutes"].GetProperty("value").GetInt32());
        Assert.Equal("a \"b\" \\ c", rows["sound.device"].GetProperty("value").GetString());
        Assert.Equal((442.0, 440.0), (rows["sound.a4"].GetProperty("value").GetDouble(), rows["sound.a4"].GetProperty("usual").GetDouble()));
        Assert.True(rows["sound.on"].GetProperty("value").GetBoolean());
    }

    [Fact]
    public void Faults_go_to_standard_error_and_the_rest_is_listed_all_the_same()
    {
        using ScratchFolder folder = new ScratchFolder().With("settings.toml", "[session]\nminutes = 0\n");
        CommandRun run = CommandRun.Of("settings", "--data", folder.Root);
        Assert.Equal((2, SettingList.All.Length + 1), (run.ExitCode, run.Lines.Length));
        Assert.Equal("clampwise: settings.toml, line 2, column 11: session.minutes: expected a whole number from 1 to 120, found 0\n", run.Error);
    }

    [Fact]
    public void A_file_is_written_once()
    {
        using var folder = new ScratchFolder();
        CommandRun run = CommandRun.Of("settings", "--write", "--data", folder.Root);
        Assert.Equal((0, folder.Settings + "\n"), (run.ExitCode, run.Out));
        Assert.Equal(SettingsText.Of(PlayerSettings.Usual), File.ReadAllText(folder.Settings));
        run = CommandRun.Of("settings", "--write", "--data", folder.Root);
        Assert.Equal(1, run.ExitCode);
        Assert.Contains("is left as it is", run.Error);
    }

    [Theory]
    [InlineData("0")]
    [InlineData("121")]
    public void Minutes_out_of_range_are_refused(string minutes)
    {
        CommandRun run = CommandRun.In(around => around with { IsTerminal = true }, "", "--minutes", minutes);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains($"--minutes: expected 1 to 120, found {minutes}", run.Error);
    }
}
