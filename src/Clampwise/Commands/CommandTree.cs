using System.CommandLine;
using System.CommandLine.Parsing;
using System.Text.RegularExpressions;
using Clampwise.Plain;

namespace Clampwise.Commands;

/// <summary>All commands of the program, and how one command line is carried out.</summary>
internal static partial class CommandTree
{
    /// <summary>Carries out one command line and gives the exit code.</summary>
    public static int Run(string[] args, Surroundings around)
    {
        ParseResult parsed = Build(around).Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (FirstFault(parsed) is { } words)
        {
            around.Error.WriteLine($"clampwise: {words} (see clampwise {HelpOf(parsed)}--help)");
            return ExitCode.BadInput;
        }

        try
        {
            return parsed.Invoke(new InvocationConfiguration { Output = around.Out, Error = around.Error, EnableDefaultExceptionHandler = false });
        }
        // A message is of more use to a player than a stack trace, whatever went wrong.
        catch (Exception trouble)
        {
            string kind = trouble is IOException or UnauthorizedAccessException ? "" : $"a fault of the program, {trouble.GetType().Name}: ";
            return around.Fail(new Theory.Fault($"{kind}{trouble.Message.ReplaceLineEndings(" ")}"));
        }
    }

    private static string? FirstFault(ParseResult parsed)
    {
        // What starts with two hyphens was meant as an option, and must not pass for data.
        if (parsed.Tokens.FirstOrDefault(token => token.Type == TokenType.Argument && token.Value.StartsWith("--", StringComparison.Ordinal)) is { } unknown)
        {
            return $"there is no option {unknown.Value} here";
        }

        if (parsed.Errors.Count == 0)
        {
            return null;
        }

        string message = parsed.Errors[0].Message;
        Match unread = UnreadNumber().Match(message);
        return unread.Success
            ? $"{unread.Groups["option"].Value}: expected a number, found '{unread.Groups["found"].Value}'"
            : message.TrimEnd('.').ReplaceLineEndings(" ");
    }

    // The library's own words name the type of the runtime.
    [GeneratedRegex("Cannot parse argument '(?<found>.*)' for option '(?<option>[^']*)'")]
    private static partial Regex UnreadNumber();

    private static RootCommand Build(Surroundings around)
    {
        var root = new RootCommand("Practice drill and ear-training game for guitarists who play with partial capos.");
        var data = new Option<string?>("--data") { Description = "The folder that holds your progress; the platform's own unless given.", HelpName = "folder", Recursive = true };
        var minutes = new Option<int?>("--minutes") { Description = "How long the daily drill lasts, 1 to 120; it goes before the settings.", HelpName = "minutes", Recursive = true };
        minutes.Validators.Add(result =>
        {
            if (result.Tokens is [var token, ..] && int.TryParse(token.Value, out int asked) && (asked < 1 || asked > OpenCommand.MostMinutes))
            {
                result.AddError($"--minutes: expected 1 to {OpenCommand.MostMinutes}, found {asked}");
            }
        });
        root.Add(data);
        root.Add(minutes);
        root.Add(NameCommand.Build(around));
        root.Add(ExplainCommand.Build(around));
        root.Add(SetupCommand.Build(around));
        root.Add(TuneCommand.Build(around));
        root.Add(PlayCommand.Build(around, data));
        root.Add(RenderCommand.Build(around));
        root.Add(FindCommand.Build(around));
        root.Add(DrillsCommand.Build(around, data));
        root.Add(ExploreCommand.Build(around, data));
        root.Add(PractiseCommands.BuildDrill(around, data, minutes));
        root.Add(PractiseCommands.BuildQuiz(around, data));
        root.Add(ProgressCommands.BuildWeak(around, data));
        root.Add(ProgressCommands.BuildProgress(around, data));
        root.Add(MemoryCommand.Build(around, data));
        root.Add(DataCommand.Build(around, data));
        root.Add(SettingsCommand.Build(around, data));
        root.Add(DoctorCommand.Build(around, data));
        root.SetAction(parsed => PlainMode.CanDraw(around) ? OpenCommand.Run(around, parsed.GetValue(data), parsed.GetValue(minutes)) : ShowHelp(root, around));
        return root;
    }

    // Nothing is wrong: a script that runs the bare command is told what there is.
    private static int ShowHelp(RootCommand root, Surroundings around)
    {
        int code = root.Parse("--help").Invoke(new InvocationConfiguration { Output = around.Out, Error = around.Error });
        around.Error.WriteLine("The screens need a terminal to draw on; drill, quiz, weak and explore go line by line with --plain.");
        return code;
    }

    private static string HelpOf(ParseResult parsed) =>
        parsed.CommandResult.Command is RootCommand ? "" : $"{parsed.CommandResult.Command.Name} ";
}
