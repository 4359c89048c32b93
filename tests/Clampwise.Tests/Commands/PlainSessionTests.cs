using System.Text.RegularExpressions;

namespace Clampwise.Tests.Commands;

public sealed partial class PlainSessionTests : IDisposable
{
    private readonly string _data = Directory.CreateTempSubdirectory("clampwise-plain").FullName;

    public void Dispose() => Directory.Delete(_data, recursive: true);

    [Fact]
    public void A_session_is_asked_and_answered_line_by_line()
    {
        CommandRun run = CommandRun.WithInput("hint\n?\n\nend\n", "drill", "--plain", "--data", _data);
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("Setup standard + 3-5@2.", run.Out);
        Assert.Contains("string 5 held by the clamp at fret 2, rings", run.Out);
        Assert.Contains("Hint: ", run.Out);
        Assert.Matches(Known(), run.Out);
        Assert.Contains("1 asked, 0 right", run.Out);
    }

    [Fact]
    public void The_question_does_not_give_the_answer_away()
    {
        CommandRun run = CommandRun.WithInput("", "quiz", "--plain", "--count", "1", "--data", _data);
        Assert.DoesNotContain("the root", run.Out);
        Assert.Contains("Nothing asked this time", run.Out);
    }

    [Fact]
    public void Input_that_ends_cuts_the_session_short_and_keeps_what_was_answered()
    {
        CommandRun.WithInput("1\n", "quiz", "--plain", "--count", "5", "--data", _data);
        CommandRun export = CommandRun.Of("data", "export", "--data", _data);
        Assert.Single(export.Lines, line => line.Contains("\"kind\":\"attempt\"", StringComparison.Ordinal));
        Assert.Equal(0, CommandRun.Of("data", "check", "--data", _data).ExitCode);
    }

    [Fact]
    public void What_cannot_be_taken_as_an_answer_costs_nothing()
    {
        CommandRun run = CommandRun.WithInput("9\nxyz\nagain\nend\n", "quiz", "--plain", "--count", "3", "--data", _data);
        Assert.Contains("expected 1 to 4 or a name, found 9", run.Out);
        Assert.Contains("expected a note letter", run.Out);
        Assert.Contains("Nothing asked this time", run.Out);
    }

    [Fact]
    public void A_drill_that_is_not_there_is_refused()
    {
        CommandRun run = CommandRun.Of("drill", "nothing", "--plain", "--data", _data);
        Assert.Equal(2, run.ExitCode);
        Assert.StartsWith("clampwise: there is no such drill: use one of first-six", run.Error);
    }

    [Fact]
    public void Weak_shapes_can_be_listed_and_reviewed()
    {
        CommandRun.WithInput("?\n\n?\n\nend\n", "quiz", "--plain", "--count", "5", "--data", _data);
        CommandRun list = CommandRun.Of("weak", "--data", _data);
        Assert.Equal(2, list.Lines.Length);
        Assert.Contains("missed 1 of the last 1 times", list.Out);
        Assert.Contains("to come.", CommandRun.WithInput("end\n", "weak", "--plain", "--data", _data).Out);
        Assert.Contains("2 asked, 0 right", CommandRun.Of("progress", "--data", _data).Out);
    }

    [GeneratedRegex("It is [A-G].*\\.")]
    private static partial Regex Known();
}
