using Clampwise.Practice;

namespace Clampwise.Application;

/// <summary>What every face of the program says of a session.</summary>
public static class SessionInWords
{
    /// <summary>Why a question may be skipped, in the order in which it is offered.</summary>
    public static IReadOnlyList<(SkipReason Reason, string Words)> Reasons { get; } =
    [
        (SkipReason.NotNow, "not now"),
        (SkipReason.HandNeedsRest, "my hand needs a rest"),
        (SkipReason.NoInstrument, "no guitar at hand, or it is clamped otherwise"),
        (SkipReason.CannotListen, "I can't listen here"),
        (SkipReason.LooksWrong, "the question looks wrong"),
    ];

    /// <summary>What each grade means, a line each, the lowest first.</summary>
    public static IReadOnlyList<string> GradesInWords { get; } =
    [
        "missed: wrong, or not known.",
        "strained: right, with effort or help.",
        "steady: right.",
        "instant: right at once.",
    ];

    /// <summary>What a session is called: by its own title, else by its kind.</summary>
    public static string Title(SessionKind kind, string? own) => own ?? kind switch
    {
        SessionKind.Daily => "the daily drill",
        SessionKind.Quiz => "name that voicing",
        _ => "weak shapes",
    };

    /// <summary>What a session is called and how long it has run: <c>the daily drill, 1:58 practised</c>.</summary>
    public static string InShort(SessionState session, Moment now) => $"{Title(session.Kind, session.Title)}, {Clock(session.Clock.At(now))} practised";

    /// <summary>A time as a clock shows it: <c>1:58</c>.</summary>
    public static string Clock(TimeSpan time) => $"{(int)time.TotalMinutes}:{time.Seconds:00}";

    /// <summary>That the day's work is done, and nothing is lost by stopping.</summary>
    public const string Done = "That was all that is worth asking today.";

    /// <summary>The next shapes on offer.</summary>
    public static string NextShapes(Drill next) => $"the next shapes, shown first: {next.Title}";

    /// <summary>What is said where a key or a word has nothing to play.</summary>
    public static string NothingHeard(bool isAudible) => isAudible ? "There is nothing to hear in this question." : "There is no sound.";

    /// <summary>Why a question is asked now, in a word; empty if there is nothing to say.</summary>
    public static string Part(SessionPart part) => part switch
    {
        SessionPart.WarmUp => "warm-up",
        SessionPart.New => "new",
        SessionPart.Weak => "weak",
        SessionPart.Contrast => "told apart",
        SessionPart.Again => "once more",
        SessionPart.Close => "to close",
        _ => "",
    };
}
