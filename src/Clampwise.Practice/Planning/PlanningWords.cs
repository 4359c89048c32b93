using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>The wording of plans and of what is weak.</summary>
internal static class PlanningWords
{
    public static string Backlog(Backlog backlog) =>
        $"{Counted.Of(backlog.Due, "item")} {(backlog.Due == 1 ? "has" : "have")} rested a while. Today brings back {backlog.Today}, those that gain most; about "
        + $"{Counted.Of(backlog.Sessions, "session")} like this and all are back. Nothing new until then.";

    public static string Fit(FitReport report) => report.IsAccepted
        ? $"The memory model now follows your own {report.Answers} answers: it predicts the newest fifth of them with a loss of "
            + $"{report.LossAfter:0.0000} instead of {report.LossBefore:0.0000}. It can be undone."
        : report.Answers < WeightFit.LeastAnswers
            ? $"The memory model stays as it is: {Counted.Of(report.Answers, "answer")} {(report.Answers == 1 ? "is" : "are")} too few to fit it, {WeightFit.LeastAnswers} are needed."
            : $"The memory model stays as it is: fitted to {report.Answers} answers it predicts the newest fifth of them no better than chance may have it "
                + $"({report.LossAfter:0.0000} against {report.LossBefore:0.0000}, give or take {report.StandardError:0.0000}).";

    public const string OnlyChanges = "these drills ask only for changes in time, which take a drill to itself: choose one of them alone.";

    public const string OnlyHeard = "all there is to ask is heard, and there is no sound.";

    public const string NothingAsked = "no drill holds a shape that can be asked in its directions: a name takes a chord, a change two shapes.";

    public const string AllAskedToday = "all of it was asked today or is not due yet.";

    public const string FitUndone = "The memory model is back to the weights it had before.";

    public static string RecallFallen(double recall) => $"recall down to {recall * 100:0} %";

    public static string Missed(int misses, int of) => of == 1 ? "missed the only time" : $"missed {misses} of the last {of} times";

    public static string Lapsed(int lapses) => $"lost {(lapses == 1 ? "once" : $"{lapses} times")} after it was known";

    public static string Slow(double times) => $"takes {times:0.0} times your usual time";

    public static string TakenFor(string name, int times, int of) => $"taken for {name} in {times} of {of}";

    public const string NotSteady = "right, and not steady yet";
}
