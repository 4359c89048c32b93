using Clampwise.Application;
using Clampwise.Look;
using Clampwise.Practice;
using Clampwise.Terminal;

namespace Clampwise.Screens.Session;

/// <summary>What a session came to.</summary>
internal sealed class SummaryPage(Frame frame, ScreenDesk desk, SessionSummary summary) : Page
{
    private const int BarWidth = 24;
    private bool _isDone;
    private string? _notice;

    public override string Title => $"{SessionInWords.Title(summary.Kind, summary.Title)}: done";

    public override IReadOnlyList<PageKey> Keys =>
    [
        PageKey.On(KeyPress.Enter, "back to today", frame.Close) with { TakesAny = !IsDone },
        .. IsDone && desk.NextDrill is not null ? [PageKey.On('n', "next shapes", () => Begin(desk.PlanNextShapes()))] : Array.Empty<PageKey>(),
        .. IsDone && desk.Sound.IsAudible ? [PageKey.On('e', "by ear", () => Begin(desk.PlanByEar()))] : Array.Empty<PageKey>(),
    ];

    // A day that has run out of questions, not of minutes.
    private bool IsDone => summary is { Kind: SessionKind.Daily, WasCutShort: false } && _isDone;

    private void Begin(SessionPlan plan)
    {
        if (plan.IsEmpty)
        {
            _notice = $"Nothing to ask just now: {plan.WhyEmpty}";
            return;
        }

        frame.Replace(WaitingPage.ToStart(frame, desk, plan));
    }

    // Worked out once what was learned is with the desk.
    public override void Enter() => _isDone = desk.IsDayDone;

    protected override void BeforeKey() => _notice = null;

    public override IReadOnlyList<string> Help { get; } =
    [
        "What was missed comes back soon; what went well comes back later, just before it would be forgotten. Days without practice are no fault: what waits is put in order for you.",
    ];

    public override IReadOnlyList<Line> Draw(int width, int height)
    {
        List<Line> lines =
        [
            Line.Empty,
            Line.Of(summary.Words, Tone.Strong),
            .. Offers(width),
            Line.Of($"{SessionInWords.Clock(summary.Practised)} practised{(summary.WasCutShort ? ", ended early" : "")}; {summary.FirstSights} met for the first time.", Tone.Quiet),
            Line.Empty,
            .. Enum.GetValues<Grade>().Reverse().Select(GradeLine),
        ];
        if (!summary.Missed.IsEmpty)
        {
            lines.AddRange([Line.Empty, Line.Of("Look at again", Tone.Strong), .. summary.Missed.Take(4).Select(OutcomeLine)]);
        }

        Outcome[] stronger = [.. summary.Strengthened.Take(3)];
        if (stronger.Length > 0)
        {
            lines.AddRange([Line.Empty, Line.Of("Lasts longer now", Tone.Strong), .. stronger.Select(outcome => OutcomeLine(outcome).And($"  about {Days(outcome.StabilityAfter)}", Tone.Right))]);
        }

        lines.AddRange([Line.Empty, Line.Of(summary.DueTomorrow == 0 ? "Nothing is due on the next practice day." : $"{summary.DueTomorrow} due on the next practice day.", Tone.Quiet)]);
        lines.AddRange(Line.Wrap("Take the clamp off, and give hands and ears a rest.", width, Tone.Quiet));
        return lines;
    }

    private IEnumerable<Line> Offers(int width)
    {
        if (!IsDone)
        {
            return [];
        }

        IEnumerable<Line> next = desk.NextDrill is { } drill ? Line.Wrap($"n  {SessionInWords.NextShapes(drill)}", width, Tone.Quiet) : [];
        IEnumerable<Line> ear = desk.Sound.IsAudible ? [Line.Of("e  by ear alone, what was met", Tone.Quiet)] : [];
        return [.. Line.Wrap(SessionInWords.Done, width, Tone.Strong), .. next, .. ear, .. _notice is { } said ? Line.Wrap(said, width, Tone.Wrong) : []];
    }

    private Line GradeLine(Grade grade)
    {
        int count = summary.Grades[grade];
        int full = summary.Asked == 0 ? 0 : (int)Math.Round((double)BarWidth * count / summary.Asked);
        return Line.Of($"  {grade.ToString().ToLowerInvariant(),-9}", Tone.Plain)
            .And(new string(desk.Glyphs.Full, full), grade == Grade.Missed ? Tone.Wrong : Tone.Right)
            .And(new string(desk.Glyphs.Blank, BarWidth - full), Tone.Quiet)
            .And($" {count}");
    }

    private static Line OutcomeLine(Outcome outcome) => Line.Of($"  {outcome.Planned.Item.Subject.Voicing.ShapeName,-10}", Tone.Strong)
        .And($" sounds {outcome.Planned.Item.Subject.Voicing.SoundingName,-10}")
        .And($" {outcome.Attempt.Item.Direction.Short()}", Tone.Quiet);

    private static string Days(double days) => days < 1.5 ? "a day" : $"{days:0} days";
}
