using System.CommandLine;
using Clampwise.Plain;
using Clampwise.Practice;
using Clampwise.Screens;

namespace Clampwise.Commands;

/// <summary><c>clampwise drill</c>, <c>quiz</c> and <c>weak --plain</c>: sessions line by line.</summary>
internal static class PractiseCommands
{
    private static readonly TimeSpan s_patience = TimeSpan.FromSeconds(2);

    public static Command BuildDrill(Surroundings around, Option<string?> data, Option<int?> minutes)
    {
        var id = new Argument<string?>("id") { Description = "One drill alone; all that are open unless given.", Arity = ArgumentArity.ZeroOrOne };
        Option<bool> plain = PlainOption();
        var command = new Command("drill", "The daily drill; with --plain line by line, for screen readers and pipes.") { id, plain };
        command.SetAction(parsed => Run(around, parsed.GetValue(data), parsed.GetValue(minutes), parsed.GetValue(plain), desk =>
        {
            PlanRequest request = desk.Request();
            return parsed.GetValue(id) is not { } wanted ? DailyPlanner.Plan(request)
                : desk.Drills.FirstOrDefault(drill => drill.Id.ToString() == wanted) is { } drill ? DailyPlanner.Plan(request with { Repertoire = Repertoire.Of([drill]) })
                : null;
        }));
        return command;
    }

    public static Command BuildQuiz(Surroundings around, Option<string?> data)
    {
        var count = new Option<int>("--count") { Description = "How many questions.", HelpName = "number", DefaultValueFactory = _ => QuizPlanner.UsualCount };
        Option<bool> plain = PlainOption();
        var command = new Command("quiz", "Name that voicing; with --plain line by line.") { count, plain };
        command.SetAction(parsed => parsed.GetValue(count) < 1
            ? around.Refuse(new Theory.Fault($"--count: expected 1 or more, found {parsed.GetValue(count)}"))
            : Run(around, parsed.GetValue(data), null, parsed.GetValue(plain), desk => QuizPlanner.Plan(desk.Request(), parsed.GetValue(count))));
        return command;
    }

    /// <summary>The review of weak shapes, line by line.</summary>
    public static int ReviewWeak(Surroundings around, string? data) =>
        Run(around, data, null, isPlain: true, desk => WeakPlanner.Plan(desk.Request()));

    public static Option<bool> PlainOption() => new("--plain") { Description = "Line by line on standard input and output." };

    private static int Run(Surroundings around, string? data, int? minutes, bool isPlain, Func<Desk, SessionPlan?> plan) =>
        OpenCommand.WithDesk(around, data, minutes, s_patience, (desk, screens) =>
        {
            if (plan(desk) is not { } planned)
            {
                return around.Refuse(new Theory.Fault($"there is no such drill: use one of {string.Join(", ", desk.Drills.Select(drill => drill.Id))}"));
            }

            if (planned.IsEmpty)
            {
                around.Out.WriteLine("Nothing to ask just now.");
                return ExitCode.Good;
            }

            if (!isPlain && around.IsTerminal && around.Variable("TERM") != "dumb")
            {
                return screens(desk.Start(planned));
            }

            if (desk.Sound.Notice is { } silent)
            {
                around.Out.WriteLine(silent);
            }

            around.Out.WriteLine("Type help for what can be typed.");
            return new PlainSession(desk, desk.Start(planned), around.In, around.Out).Run() ? ExitCode.Good : ExitCode.Trouble;
        });
}
