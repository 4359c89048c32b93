using System.CommandLine;
using Clampwise.Application;
using Clampwise.Plain;
using Clampwise.Practice;
using Clampwise.Screens.Session;

namespace Clampwise.Commands;

/// <summary><c>clampwise drill</c>, <c>quiz</c> and <c>weak --plain</c>: sessions on the screen or line by line.</summary>
internal static class PractiseCommands
{
    private static readonly TimeSpan s_patience = TimeSpan.FromSeconds(2);

    public static Command BuildDrill(Surroundings around, Option<string?> data, Option<int?> minutes)
    {
        var id = new Argument<string?>("id") { Description = "One drill alone; all that are open unless given.", Arity = ArgumentArity.ZeroOrOne };
        Option<bool> plain = PlainOption();
        Option<int?> seed = SeedOption();
        Option<bool> fresh = NewOption();
        var command = new Verb("drill", "The daily drill, or one drill alone; with --plain line by line, for screen readers and pipes.", "drill", "drill first-six --plain --minutes 5") { id, plain, seed, fresh, minutes, data };
        command.SetAction(parsed => Run(around, parsed.GetValue(data), parsed.GetValue(minutes), new Wish(parsed.GetValue(plain), parsed.GetValue(seed), parsed.GetValue(fresh)), (desk, request) =>
            parsed.GetValue(id) is not { } wanted ? DailyPlanner.Plan(request)
                : desk.Shelf.Drills.FirstOrDefault(drill => drill.Id.ToString() == wanted) is { } drill ? DailyPlanner.Plan(request, drill)
                : DrillsCommand.NoSuch(wanted, desk.Shelf.Drills)));
        return command;
    }

    public static Command BuildQuiz(Surroundings around, Option<string?> data)
    {
        var questions = new Option<int>("--questions") { Description = "How many questions.", HelpName = "number", DefaultValueFactory = _ => QuizPlanner.UsualCount };
        Option<bool> plain = PlainOption();
        Option<int?> seed = SeedOption();
        Option<bool> fresh = NewOption();
        var command = new Verb("quiz", "Name that voicing; with --plain line by line.", "quiz", "quiz --questions 10 --plain") { questions, plain, seed, fresh, data };
        command.SetAction(parsed => parsed.GetValue(questions) < 1
            ? around.Refuse(new Theory.Fault($"--questions: expected 1 or more, found {parsed.GetValue(questions)}"))
            : Run(around, parsed.GetValue(data), null, new Wish(parsed.GetValue(plain), parsed.GetValue(seed), parsed.GetValue(fresh)), (_, request) => QuizPlanner.Plan(request, parsed.GetValue(questions))));
        return command;
    }

    /// <summary>The review of weak shapes, line by line.</summary>
    public static int ReviewWeak(Surroundings around, string? data, int? seed, bool isNew) =>
        Run(around, data, null, new Wish(IsPlain: true, seed, isNew), (_, request) => WeakPlanner.Plan(request));

    public static Option<bool> PlainOption() => new("--plain") { Description = "Line by line on standard input and output, each drawing in words." };

    public static Option<int?> SeedOption() => new("--seed") { Description = "The seed of all chance: with the same progress the same questions in the same order, for scripts.", HelpName = "number" };

    public static Option<bool> NewOption() => new("--new") { Description = "Start anew, and end a session that waits; its answers are kept." };

    private static int Run(Surroundings around, string? data, int? minutes, Wish wish, Func<Desk, PlanRequest, Theory.Result<SessionPlan>> plan) =>
        OpenCommand.WithDesk(around, data, minutes, s_patience, (desk, screens) =>
        {
            PlanRequest usual = desk.Request();
            if (!plan(desk, wish.Seed is { } given ? usual with { Seed = given } : usual).TryGet(out SessionPlan? planned, out Theory.Fault? fault))
            {
                return around.Refuse(fault);
            }

            if (!PlainMode.IsChosen(around, wish.IsPlain))
            {
                return planned.IsEmpty ? NothingToAsk(around, planned) : screens(frame => wish.IsNew
                    ? new SessionPage(frame, desk, Start(desk, planned, wish.Seed))
                    : WaitingPage.ToStart(frame, desk, planned, () => Start(desk, planned, wish.Seed)));
            }

            desk.Sessions.TakeUpKept();
            return wish.IsNew || desk.Sessions.Waiting is not { } waiting
                ? planned.IsEmpty ? NothingToAsk(around, planned) : RunPlain(around, desk, Start(desk, planned, wish.Seed))
                : IsTakenUp(waiting, planned, wish) ? RunPlain(around, desk, waiting)
                : around.Refuse(new Theory.Fault(PlainText.AnotherWaits(waiting, desk)));
        });

    // A seed asks for the same questions each time: what was put down is another session.
    private static bool IsTakenUp(SessionState waiting, SessionPlan planned, Wish wish) =>
        wish.Seed is null && waiting.Kind == planned.Kind && waiting.Title == planned.Title;

    private static SessionState Start(Desk desk, SessionPlan planned, int? seed) =>
        desk.Sessions.Start(planned) is var started && seed is { } given ? started with { Seed = given } : started;

    private static int RunPlain(Surroundings around, Desk desk, SessionState session)
    {
        desk.Sessions.Rest(null);
        PlainMode.SayNotices(around, desk);
        bool isKept = new PlainSession(desk, session, around.In, around.Out).Run();
        return desk.Sessions.Close() is { } unkept ? around.Fail(unkept) : isKept ? ExitCode.Good : ExitCode.Trouble;
    }

    private static int NothingToAsk(Surroundings around, SessionPlan plan)
    {
        around.Out.WriteLine(plan.WhyEmpty is { } why ? $"Nothing to ask just now: {why}" : "Nothing to ask just now.");
        return ExitCode.Good;
    }

    /// <summary>How a session is wished for.</summary>
    /// <param name="IsPlain">Line by line.</param>
    /// <param name="Seed">The seed of all chance; null for any.</param>
    /// <param name="IsNew">Not the one that waits.</param>
    private sealed record Wish(bool IsPlain, int? Seed, bool IsNew);
}
