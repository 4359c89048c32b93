using Clampwise.Application;
using Clampwise.Look;
using Clampwise.Practice;
using Clampwise.Terminal;

namespace Clampwise.Screens.Session;

/// <summary>Asks before a session that waits is ended by the start of another: at most one waits.</summary>
internal sealed class WaitingPage : Page
{
    private readonly Frame _frame;
    private readonly ScreenDesk _desk;
    private readonly SessionState _waiting;
    private readonly SessionPlan _plan;
    private readonly Func<SessionState> _start;

    private WaitingPage(Frame frame, ScreenDesk desk, SessionState waiting, SessionPlan plan, Func<SessionState> start) =>
        (_frame, _desk, _waiting, _plan, _start) = (frame, desk, waiting, plan, start);

    public override string Title => "a session waits";

    public override IReadOnlyList<PageKey> Keys =>
    [
        PageKey.On(KeyPress.Enter, "start the new one", () => _frame.Replace(new SessionPage(_frame, _desk, _start()))),
        PageKey.On('g', "go on with the one that waits", () => _frame.Replace(new SessionPage(_frame, _desk, _waiting))),
        PageKey.On(KeyPress.Esc, "back", _frame.Close),
    ];

    public override IReadOnlyList<string> Help { get; } =
    [
        "One session can wait at a time, until the end of the day. Starting another ends it: its answers are kept, and what it had not asked yet is planned anew.",
    ];

    /// <summary>The page that starts a plan: its session, or this question first if another session waits.</summary>
    /// <param name="frame">Where the pages are shown.</param>
    /// <param name="desk">Where the session may wait.</param>
    /// <param name="plan">What is to be started; not empty.</param>
    /// <param name="start">How it is started; by <see cref="SessionPlace.Start"/> unless given.</param>
    public static Page ToStart(Frame frame, ScreenDesk desk, SessionPlan plan, Func<SessionState>? start = null)
    {
        Func<SessionState> started = start ?? (() => desk.Sessions.Start(plan));
        return desk.Sessions.Waiting is { } waiting ? new WaitingPage(frame, desk, waiting, plan, started) : new SessionPage(frame, desk, started());
    }

    public override IReadOnlyList<Line> Draw(int width, int height) =>
    [
        Line.Empty,
        .. Line.Wrap($"A session waits: {SessionInWords.InShort(_waiting, _desk.Now)}.", width, Tone.Strong),
        .. Line.Wrap("Only one can wait. Starting another ends it; its answers are kept.", width, Tone.Quiet),
        Line.Empty,
        Line.Of("  Enter  ", Tone.Key).And($"end it, and start {SessionInWords.Title(_plan.Kind, _plan.Title)}"),
        Line.Of("  g      ", Tone.Key).And("go on with the one that waits"),
        Line.Of("  Esc    ", Tone.Key).And("keep it, and start nothing"),
    ];
}
