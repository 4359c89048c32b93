using System.Text.RegularExpressions;

namespace Clampwise.Tests.Commands;

public sealed partial class PlainSessionTests : IDisposable
{
    private readonly string _data = Directory.CreateTempSubdirectory("clampwise-plain").FullName;

    // Each empty line goes on from a card; at a question it is said once more.
    private const string PastCards = "\n\n\n\n";

    public void Dispose() => Directory.Delete(_data, recursive: true);

    [Fact]
    public void A_session_is_asked_and_answered_line_by_line()
    {
        CommandRun run = CommandRun.WithInput(PastCards + "hint\n?\n\nend\n", "drill", "--plain", "--data", _data);
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("Setup standard + 3-5@2: a clamp at fret 2 over strings 3 to 5", run.Out);
        Assert.Contains("string 5 held by the clamp at fret 2, rings", run.Out);
        Assert.Contains("Hint: ", run.Out);
        Assert.Matches(Known(), run.Out);
        Assert.Contains("1 asked, 0 right", run.Out);
    }

    [Fact]
    public void The_question_does_not_give_the_answer_away()
    {
        CommandRun run = CommandRun.WithInput(PastCards + "", "quiz", "--plain", "--questions", "1", "--data", _data);
        string asked = run.Out[run.Out.LastIndexOf("1 to come", StringComparison.Ordinal)..];
        Assert.Contains("?", asked);
        Assert.DoesNotContain("the root", asked);
        Assert.Contains("Nothing asked this time", run.Out);
    }

    [Fact]
    public void Input_that_ends_cuts_the_session_short_and_keeps_what_was_answered()
    {
        CommandRun.WithInput(PastCards + "1\n", "quiz", "--plain", "--questions", "5", "--data", _data);
        CommandRun export = CommandRun.Of("data", "export", "--data", _data);
        Assert.Single(export.Lines, line => line.Contains("\"kind\":\"attempt\"", StringComparison.Ordinal));
        Assert.Equal(0, CommandRun.Of("data", "check", "--data", _data).ExitCode);
    }

    [Fact]
    public void What_cannot_be_taken_as_an_answer_costs_nothing()
    {
        CommandRun run = CommandRun.WithInput(PastCards + "9\nxyz\nagain\nend\n", "quiz", "--plain", "--questions", "3", "--data", _data);
        Assert.Contains("expected 1 to 4 or a name, found 9", run.Out);
        Assert.Contains("column 1: expected a chord name, which begins with a letter A to G in either case", run.Out);
        Assert.Contains("Nothing asked this time", run.Out);
    }

    [Fact]
    public void A_drill_that_is_not_there_is_refused()
    {
        CommandRun run = CommandRun.Of("drill", "nothing", "--plain", "--data", _data);
        Assert.Equal(2, run.ExitCode);
        Assert.StartsWith("clampwise: there is no drill 'nothing': use one of first-six", run.Error);
    }

    [Fact]
    public void Weak_shapes_can_be_listed_and_reviewed()
    {
        CommandRun.WithInput(PastCards + "?\n\n\n?\n\nend\n", "quiz", "--plain", "--questions", "5", "--data", _data);
        CommandRun list = CommandRun.Of("weak", "--data", _data);
        Assert.Equal(2, list.Lines.Length);
        Assert.Contains("missed the only time", list.Out);
        Assert.Contains("to come.", CommandRun.WithInput(PastCards + "end\n", "weak", "--plain", "--data", _data).Out);
        Assert.Contains("2 asked, 0 right", CommandRun.Of("progress", "--data", _data).Out);
    }

    [Fact]
    public void A_session_of_one_drill_bears_its_title()
    {
        Assert.StartsWith("Low drone: all but string 6 clamped. Type help", CommandRun.WithInput(PastCards + "", "drill", "low-drone", "--plain", "--data", _data).Out, StringComparison.Ordinal);
        Assert.StartsWith("The daily drill. Type help", CommandRun.WithInput(PastCards + "", "drill", "--plain", "--data", _data).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_session_put_down_is_taken_up_again_today_with_the_same_question()
    {
        CommandRun first = CommandRun.WithInput(PastCards + "?\n\nlater\n", "drill", "--plain", "--data", _data);
        CommandRun second = CommandRun.WithInput(PastCards + "end\n", "drill", "--plain", "--data", _data);
        string question = first.Out[first.Out.IndexOf("1 answered", StringComparison.Ordinal)..first.Out.IndexOf("Put down.", StringComparison.Ordinal)];
        Assert.StartsWith("The daily drill, taken up again.", second.Out, StringComparison.Ordinal);
        Assert.Contains(question[question.IndexOf("Shape ", StringComparison.Ordinal)..], second.Out);
        Assert.Contains("1 asked, 0 right", second.Out);
        Assert.StartsWith("The daily drill. ", CommandRun.WithInput(PastCards + "", "drill", "--plain", "--data", _data).Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("drill --plain", "quiz --plain", "the daily drill", "drill")]
    [InlineData("drill --plain", "drill low-drone --plain", "the daily drill", "drill")]
    [InlineData("drill low-drone --plain", "drill --plain", "Low drone: all but string 6 clamped", "drill low-drone")]
    [InlineData("quiz --plain", "drill --plain --seed 5", "name that voicing", "quiz")]
    [InlineData("drill --plain", "drill --plain --seed 5", "the daily drill", "drill")]
    public void Another_session_ends_the_one_that_waits_only_when_told_to(string first, string second, string waits, string command)
    {
        string[] Args(string line) => [.. line.Split(' '), "--data", _data];
        CommandRun.WithInput(PastCards + "?\n\nlater\n", Args(first));
        CommandRun refused = CommandRun.WithInput(PastCards + "end\n", Args(second));
        Assert.Equal((2, ""), (refused.ExitCode, refused.Out));
        Assert.Matches($"^clampwise: a session waits: {waits}, \\d:\\d\\d practised. 'clampwise {command} --plain' takes it up; --new ends it", refused.Error);
        Assert.Contains("taken up again", CommandRun.WithInput(PastCards + "later\n", Args($"{command} --plain")).Out);
        Assert.Equal(0, CommandRun.WithInput(PastCards + "end\n", Args($"{second} --new")).ExitCode);
        string kept = CommandRun.Of("data", "export", "--data", _data).Out;
        Assert.Equal(2, kept.Split("\"kind\":\"session-ended\"").Length - 1);
        Assert.DoesNotContain("taken up again", CommandRun.WithInput(PastCards + "end\n", Args(first)).Out);
    }

    [Fact]
    public void A_quiz_says_how_many_questions_it_has()
    {
        Assert.StartsWith("Name that voicing: 3 questions. ", CommandRun.WithInput(PastCards + "", "quiz", "--plain", "--questions", "3", "--data", _data).Out, StringComparison.Ordinal);
        Assert.StartsWith("Name that voicing: 1 question. ", CommandRun.WithInput(PastCards + "", "quiz", "--plain", "--questions", "1", "--data", _data).Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("drill")]
    [InlineData("drill", "low-drone")]
    [InlineData("quiz")]
    public void A_seed_and_the_same_lines_give_the_same_session(params string[] args)
    {
        CommandRun Session(string folder) =>
            CommandRun.WithInput(PastCards + "hint\n1\n\n2\nsteady\n\nskip\n?\n\nend\n", [.. args, "--plain", "--seed", "5", "--data", Path.Combine(_data, folder)]);
        CommandRun first = Session("one");
        Assert.Equal(first, Session("two"));
        Assert.NotEqual(first.Out, CommandRun.WithInput(PastCards + "hint\n1\n\n2\nsteady\n\nskip\n?\n\nend\n", [.. args, "--plain", "--seed", "6", "--data", Path.Combine(_data, "three")]).Out);
    }

    [Theory]
    [InlineData(false, "xterm", "drill")]
    [InlineData(true, "dumb", "drill")]
    [InlineData(false, "xterm", "quiz")]
    [InlineData(true, "dumb", "quiz")]
    [InlineData(false, "xterm", "explore")]
    [InlineData(true, "dumb", "explore")]
    public void Without_a_terminal_to_draw_on_it_goes_line_by_line_and_says_so_once(bool isTerminal, string term, string command)
    {
        CommandRun run = CommandRun.In(around => around with { IsTerminal = isTerminal, Variable = name => name == "TERM" ? term : null }, "end\n", command, "--data", _data);
        Assert.Equal(0, run.ExitCode);
        Assert.Equal("No terminal to draw on: line by line instead, as with --plain.", run.Lines[0]);
        Assert.Single(run.Lines, line => line == run.Lines[0]);
        Assert.DoesNotContain("No terminal", CommandRun.WithInput(PastCards + "end\n", command, "--plain", "--data", _data).Out);
    }

    [Theory]
    [InlineData(false, "xterm")]
    [InlineData(true, "dumb")]
    public void The_bare_command_prints_help_and_names_what_to_use_without_a_terminal(bool isTerminal, string term)
    {
        CommandRun run = CommandRun.In(around => around with { IsTerminal = isTerminal, Variable = name => name == "TERM" ? term : null }, "");
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("Usage:", run.Out);
        Assert.Contains("go line by line with --plain", run.Error);
    }

    // ECMA-48: what steers a terminal begins with ESC or is a control character; plain lines have neither, with colours wished or not.
    [Theory]
    [InlineData(null)]
    [InlineData("1")]
    public void Plain_output_has_no_escape_sequences_and_no_control_characters(string? noColour)
    {
        string[][] commands = [["drill"], ["quiz", "--questions", "3"], ["weak", "--plain"], ["explore"], ["explore", "2-4@2", "--plain"]];
        foreach (string[] command in commands)
        {
            CommandRun run = CommandRun.In(
                around => around with { Variable = name => name == "NO_COLOR" ? noColour : name == "TERM" ? "xterm-256color" : null },
                "help\nhint\n?\nsay\ndiffers\n3 fret 4\nfind D\ncompare\n\npause\n\n1\nend\n",
                [.. command, "--data", _data]);
            Assert.Equal(0, run.ExitCode);
            Assert.DoesNotContain(run.Out + run.Error, sign => char.IsControl(sign) && sign != '\n');
        }
    }

    [GeneratedRegex("It is [A-G].*\\.")]
    private static partial Regex Known();
}
