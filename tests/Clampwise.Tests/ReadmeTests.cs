using System.Text.RegularExpressions;
using Clampwise.Tests.Commands;

namespace Clampwise.Tests;

/// <summary>
/// What README.md says is true: every <c>$ clampwise ...</c> in a console block, with lines piped in by <c>printf</c> or without, is
/// carried out in a terminal of 100 columns and must print what stands beneath it; every screen block must be the golden text that it names.
/// </summary>
public partial class ReadmeTests
{
    private static readonly string s_readme = Repository.Read("README.md").ReplaceLineEndings("\n");

    public static TheoryData<string, string, string> Commands()
    {
        var rows = new TheoryData<string, string, string>();
        foreach (Match block in ConsoleBlock().Matches(s_readme))
        {
            foreach (Match command in Command().Matches(block.Groups["body"].Value))
            {
                rows.Add(command.Groups["line"].Value, command.Groups["input"].Value.Replace("\\n", "\n", StringComparison.Ordinal), command.Groups["said"].Value.TrimEnd());
            }
        }

        return rows;
    }

    public static TheoryData<string, string> Screens()
    {
        var rows = new TheoryData<string, string>();
        foreach (Match block in ScreenBlock().Matches(s_readme))
        {
            rows.Add(block.Groups["name"].Value, block.Groups["body"].Value);
        }

        return rows;
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void A_command_prints_what_the_readme_shows(string line, string input, string expected)
    {
        using var data = new ScratchFolder();
        CommandRun run = CommandRun.In(
            around => around with { Variable = name => name switch { "XDG_DATA_HOME" => data.Root, "COLUMNS" => "100", _ => null } },
            input,
            [.. Word().Matches(line).Select(word => word.Value.Trim('"', '\''))]);
        Assert.Equal(expected, (run.Out + run.Error).TrimEnd());
    }

    [Theory]
    [MemberData(nameof(Screens))]
    public void A_screen_is_a_golden_one(string name, string body) =>
        Assert.Equal(Repository.Read("tests", "Clampwise.Tests", "Screens", "golden", $"{name}.txt"), body);

    [Fact]
    public void The_two_commands_stand_in_the_readme()
    {
        Assert.Contains("\ndotnet run --project src/Clampwise\n", s_readme);
        Assert.Contains("\ndotnet test Practice.sln\n", s_readme);
    }

    [GeneratedRegex(@"```console\n(?<body>.*?)```", RegexOptions.Singleline)]
    private static partial Regex ConsoleBlock();

    [GeneratedRegex(@"<!-- screen: (?<name>[\w-]+) -->\n```text\n(?<body>.*?)```", RegexOptions.Singleline)]
    private static partial Regex ScreenBlock();

    [GeneratedRegex(@"^\$ (printf '(?<input>[^']*)' \| )?clampwise (?<line>.*)\n(?<said>(?:(?!\$ ).*\n)*)", RegexOptions.Multiline)]
    private static partial Regex Command();

    [GeneratedRegex("\"[^\"]*\"|'[^']*'|\\S+")]
    private static partial Regex Word();
}
