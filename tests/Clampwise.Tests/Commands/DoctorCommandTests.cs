using System.Diagnostics;
using System.Text.Json;
using Clampwise.Commands;
using Clampwise.Screens;
using Clampwise.Sound.Players;
using Clampwise.Sound.Strings;
using Clampwise.Storage;

namespace Clampwise.Tests.Commands;

public class DoctorCommandTests
{
    [Fact]
    public void Where_all_is_well_every_line_says_so_and_the_exit_code_is_0()
    {
        using var folder = new ScratchFolder();
        CommandRun run = Examine(folder);
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.All(run.Lines, line => Assert.StartsWith("ok ", line));
        Assert.Equal(["program", "terminal", "kind", "colours", "characters", "sound", "settings", "data", "backups", "drills"], run.Lines.Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[1]));
        Assert.Contains(run.Lines, line => line.Contains(".NET 10", StringComparison.Ordinal));
    }

    [Fact]
    public void A_folder_that_is_not_there_yet_is_not_made()
    {
        using var folder = new ScratchFolder();
        string later = Path.Combine(folder.Root, "later");
        CommandRun run = CommandRun.Of("doctor", "--data", later);
        Assert.Contains("is made at the first start", run.Out);
        Assert.False(Directory.Exists(later));
    }

    [Fact]
    public void What_is_wrong_is_said_with_how_to_mend_it_and_the_exit_code_is_1()
    {
        using ScratchFolder folder = new ScratchFolder()
            .With("settings.toml", "[session]\nminutes = 0\n[sound]\ndevice = \"hw:9\"\nsoundfont = \"/no/such.sf2\"\n")
            .With("drills/mine.toml", "title = 3\n");
        CommandRun run = Examine(folder, around => around with
        {
            Size = () => (50, 15),
            OpenSound = (_, _) => new SilentOut("no sound: there is no device", new PluckedGuitar()),
        });
        Assert.Equal(1, run.ExitCode);
        string[] wrong = [.. run.Lines.Where(line => line.StartsWith("wrong ", StringComparison.Ordinal))];
        Assert.Contains(wrong, line => line.Contains("50x15 is too small", StringComparison.Ordinal));
        Assert.Contains(wrong, line => line.Contains("there is no device", StringComparison.Ordinal));
        Assert.Contains(wrong, line => line.Contains("settings.toml, line 2, column 11", StringComparison.Ordinal));
        Assert.Contains(wrong, line => line.Contains("the SoundFont /no/such.sf2 can't be read", StringComparison.Ordinal));
        Assert.Contains(wrong, line => line.Contains("mine.toml, line 1, column 9", StringComparison.Ordinal));
        Assert.True(run.Lines.Count(line => line.Contains("to mend it: ", StringComparison.Ordinal)) >= wrong.Length);
    }

    [Fact]
    public void What_is_merely_absent_is_nothing_wrong()
    {
        using var folder = new ScratchFolder();
        CommandRun run = Examine(folder, around => around with { OpenSound = (_, _) => new SilentOut("no sound: there is no device", new PluckedGuitar()) });
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("look   sound       no sound: there is no device", run.Out);
    }

    [Fact]
    public void The_report_of_a_failure_is_told()
    {
        using var folder = new ScratchFolder();
        new FailureReport(folder.Data, TimeProvider.System).Write(new InvalidOperationException("a wheel came off"));
        CommandRun run = Examine(folder);
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("a wheel came off", run.Out);
        Assert.Contains(Path.Combine(folder.Root, "failure.txt"), run.Out);
    }

    [Theory]
    [InlineData(60)]
    [InlineData(80)]
    public void Lines_break_at_words_within_the_terminal(int columns)
    {
        using var folder = new ScratchFolder();
        CommandRun whole = Examine(folder);
        CommandRun run = Examine(folder, around => around with { Variable = name => name == "COLUMNS" ? $"{columns}" : around.Variable(name) });
        Assert.All(run.Lines, line => Assert.True(line.Length <= columns || !line.Trim().Contains(' ', StringComparison.Ordinal), line));
        Assert.Equal(whole.Out.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries), run.Out.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
    }

    [Fact]
    public void What_is_worth_a_look_leaves_the_exit_code_0()
    {
        using var folder = new ScratchFolder();
        CommandRun run = Examine(folder, around => around with { IsTerminal = false, Variable = name => name == "TERM" ? "dumb" : null });
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("look   terminal    there is none", run.Out);
        Assert.Contains("look   kind        TERM is dumb", run.Out);
        Assert.Contains("colours     none, as TERM asks; theme own, shown as plain", run.Out);
        Assert.Contains("look   characters  the locale does not name UTF-8", run.Out);
    }

    [Fact]
    public void A_damaged_backup_is_found_and_said_how_to_mend()
    {
        using ScratchFolder folder = new ScratchFolder().With("backups/2026-03-02-000004.jsonl.gz", "torn");
        CommandRun run = Examine(folder);
        Assert.Equal(1, run.ExitCode);
        Assert.Contains(run.Lines, line => line.StartsWith("wrong  data", StringComparison.Ordinal) && line.Contains("2026-03-02", StringComparison.Ordinal));
        Assert.Contains("clampwise data restore", run.Out);
    }

    [Fact]
    public void A_folder_in_use_names_who_holds_it()
    {
        using var folder = new ScratchFolder();
        using ProgressStore store = ProgressStore.Open(folder.Data, TimeProvider.System).Value;
        CommandRun run = Examine(folder);
        Assert.Equal(0, run.ExitCode);
        // The holder is this process itself here, which is not looked for.
        Assert.Contains($"look   data        {folder.Root}: 0 entries, in use by another copy of the program", run.Out);
    }

    [LinuxFact]
    public void The_process_that_holds_a_file_is_found()
    {
        using ScratchFolder folder = new ScratchFolder().With("lock", "");
        string path = Path.Combine(folder.Root, "lock");
        Assert.Null(LockHolder.Of(path));
        var start = new ProcessStartInfo("sh", ["-c", "exec 3<\"$1\"; echo ready; read _", "sh", path]) { RedirectStandardInput = true, RedirectStandardOutput = true };
        using Process other = Process.Start(start)!;
        Assert.Equal("ready", other.StandardOutput.ReadLine());
        Assert.Equal($"process {other.Id} (sh)", LockHolder.Of(path));
        other.StandardInput.Close();
        other.WaitForExit();
        Assert.Null(LockHolder.Of(path));
    }

    [Fact]
    public void Damage_in_the_journal_is_said()
    {
        using ScratchFolder folder = new ScratchFolder().With("journal.jsonl", "this is no journal\n");
        CommandRun run = Examine(folder);
        Assert.Contains("look   data        ", run.Out);
        Assert.Contains("journal", run.Out);
    }

    [Fact]
    public void Backups_that_do_not_read_are_wrong()
    {
        using ScratchFolder folder = new ScratchFolder().With("backups/2026-03-01-000012.jsonl.gz", "no archive");
        CommandRun run = Examine(folder);
        Assert.Equal(1, run.ExitCode);
        Assert.Contains("wrong  backups     1, and none of them can be read to its end", run.Out);
    }

    [Fact]
    public void Json_is_one_object_a_line()
    {
        using ScratchFolder folder = new ScratchFolder().With("settings.toml", "x = 1\n");
        CommandRun run = Examine(folder, around => around, "--json");
        JsonElement[] rows = [.. run.Lines.Select(line => JsonDocument.Parse(line).RootElement)];
        JsonElement wrong = Assert.Single(rows, row => row.GetProperty("state").GetString() == "wrong");
        Assert.Equal("settings", wrong.GetProperty("part").GetString());
        Assert.Contains("line 1, column 1", wrong.GetProperty("words").GetString());
        Assert.Contains("change it in", wrong.GetProperty("mend").GetString());
    }

    private static CommandRun Examine(ScratchFolder folder, Func<Surroundings, Surroundings>? change = null, params string[] more) => CommandRun.In(
        around => (change ?? (same => same))(around with
        {
            IsTerminal = true,
            Size = () => (80, 24),
            Variable = name => name switch { "TERM" => "xterm-256color", "LANG" => "C.UTF-8", "COLUMNS" => "1000", _ => null },
        }),
        "",
        ["doctor", "--data", folder.Root, .. more]);
}
