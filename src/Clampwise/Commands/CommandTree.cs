using System.CommandLine;
using System.CommandLine.Parsing;
using Clampwise.Plain;
using Clampwise.Streams;

namespace Clampwise.Commands;

/// <summary>All commands of the program, and how one command line is carried out.</summary>
internal static class CommandTree
{
    private const string JsonOption = "--json";

    /// <summary>Carries out one command line and gives the exit code.</summary>
    public static int Run(string[] args, Surroundings around)
    {
        around = around with { IsJson = args.Any(IsJson), Out = CleanWriter.Over(around.Out), Error = CleanWriter.Over(around.Error) };
        try
        {
            ParseResult parsed = Build(around).Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
            return Slips.First(parsed) is { } words
                ? around.Complain($"{words} (see clampwise {HelpOf(parsed)}--help)", ExitCode.BadInput)
                : parsed.Invoke(new InvocationConfiguration { Output = around.Out, Error = around.Error, EnableDefaultExceptionHandler = false });
        }
        catch (ReaderGoneException)
        {
            return ExitCode.Good;
        }
        catch (LineTooLongException trouble)
        {
            return around.Refuse(new Theory.Fault(trouble.Message));
        }
        // A message is of more use to a player than a stack trace, whatever went wrong.
        catch (Exception trouble)
        {
            string kind = trouble is IOException or UnauthorizedAccessException ? "" : $"a fault of the program, {trouble.GetType().Name}: ";
            return around.Fail(new Theory.Fault($"{kind}{trouble.Message.ReplaceLineEndings(" ")}"));
        }
    }

    // Asked of the words, since a line that cannot be read wants its fault as JSON too.
    private static bool IsJson(string word) =>
        word == JsonOption || word.Equals($"{JsonOption}=true", StringComparison.OrdinalIgnoreCase) || word.Equals($"{JsonOption}:true", StringComparison.OrdinalIgnoreCase);

    /// <summary>The tree of commands.</summary>
    internal static RootCommand Build(Surroundings around)
    {
        var root = new RootCommand("Practice drill and ear-training game for guitarists who play with partial capos.");
        var data = new Option<string?>("--data") { Description = "The folder that holds your progress; the platform's own unless given.", HelpName = "folder" };
        var minutes = new Option<int?>("--minutes") { Description = "How long the daily drill lasts, 1 to 120; it goes before the settings.", HelpName = "minutes" };
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
        Verb.ExplainHelp(root);
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
        parsed.CommandResult.Command is RootCommand ? ""
            : parsed.CommandResult.Parent is CommandResult { Command: not RootCommand } above ? $"{above.Command.Name} {parsed.CommandResult.Command.Name} "
            : $"{parsed.CommandResult.Command.Name} ";
}
