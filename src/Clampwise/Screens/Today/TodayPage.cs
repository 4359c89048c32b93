using Clampwise.Application;
using Clampwise.Charts;
using Clampwise.Fretboard;
using Clampwise.Look;
using Clampwise.Practice;
using Clampwise.Screens.Session;
using Clampwise.Settings;
using Clampwise.Terminal;
using Clampwise.Theory;

namespace Clampwise.Screens;

/// <summary>The first screen: what is waiting, and one key that starts it.</summary>
internal sealed class TodayPage(Frame frame, ScreenDesk desk, SettingsKeeper settings, Action settle, Func<IReadOnlyList<string>> notices) : Page
{
    private SessionPlan? _plan;
    private SessionPlan? _quiz;
    private string? _notice;

    public override string Title => "today";

    public override string Corner => desk.Calendar.Zone is { } zone
        ? TimeZoneInfo.ConvertTime(desk.Circumstances.Time.GetUtcNow(), zone).ToString("dddd d MMMM", System.Globalization.CultureInfo.InvariantCulture)
        : "";

    public override IReadOnlyList<PageKey> Keys =>
    [
        PageKey.On(KeyPress.Enter, desk.Sessions.Resting is null ? "start" : "go on", Start).Or(KeyPress.Space),
        PageKey.On('s', "settings", () => frame.Open(new SettingsPage(frame, desk, settings, settle))),
        PageKey.On('q', "quit", frame.Close),
        PageKey.On('n', "name that voicing", () => Begin(Quiz, "There is nothing to name.")),
        PageKey.On('w', "weak shapes", () => frame.Open(new WeakPage(frame, desk))),
        PageKey.On('t', "tune up", () => frame.Open(new TunePage(frame, desk, FirstSetup(Plan)))),
        PageKey.On('d', "drills", () => frame.Open(new DrillsPage(frame, desk))),
        PageKey.On('e', "explore", () => frame.Open(new ExplorerPage(frame, desk, FirstSetup(Plan)))),
        PageKey.On('p', "progress", () => frame.Open(new ProgressPage(frame, desk))),
    ];

    public override IReadOnlyList<string> Help { get; } =
    [
        "Enter starts the daily drill: fifteen minutes on a clock that you can stop. It warms up on what is solid, brings back what is due, mixes in weak shapes and a few new ones, and closes on something easy.",
        "n is the name-that-voicing quiz: up to twenty voicings seen or heard, to be named. w reviews what is weak, and says why it is. d lists all drills. e lets you walk on the fretboard and find voicings, t helps to tune up after the clamp went on, p shows progress, s the settings.",
        "Put the clamp where the picture shows it, tune up (a clamp pulls strings sharp), then start.",
    ];

    public override IReadOnlyList<Line> Draw(int width, int height)
    {
        SessionPlan plan = Plan;
        Setup setup = FirstSetup(plan);
        int weak = WeakShapes.Find(desk.Repertoire.Items, desk.Record.Memory, desk.Today, desk.Repertoire).Length;
        List<Line> lines =
        [
            Line.Empty,
            StartLine(plan),
            Line.Of("   n    ", Tone.Key).And("Name that voicing", Tone.Strong).And($"  {Quiz.Items.Length} {(desk.Sound.IsAudible ? "to see or hear, and name" : "to see and name")}", Tone.Quiet),
            Line.Of("   w    ", Tone.Key).And("Weak shapes", Tone.Strong).And(weak == 0 ? "        none just now" : $"        {weak} want another look", Tone.Quiet),
            Line.Of("   d    ", Tone.Key).And("Drills", Tone.Strong).And($"             {desk.Repertoire.Drills.Length} of {desk.Shelf.Drills.Length} open", Tone.Quiet),
            Line.Of("   e    ", Tone.Key).And("Explore", Tone.Strong).And("            see, hear and find voicings", Tone.Quiet),
            Line.Of("   t    ", Tone.Key).And("Tune up", Tone.Strong).And("            after the clamp went on", Tone.Quiet),
            Line.Of("   p    ", Tone.Key).And("Progress", Tone.Strong).And("           what has stuck", Tone.Quiet),
            Line.Empty,
            Line.Of("Clamp for the first question: ", Tone.Quiet).And($"{setup}", Tone.Held),
        ];
        Line[] said = [.. plan.Backlog is { } backlog ? Line.Wrap(backlog.Words, width) : [], .. Notices(width)];
        // Where there is no room for all, blank lines go first, then the legend, then the picture; what must be said stays.
        IReadOnlyList<Line> board = desk.Draw(new FretboardPicture(setup, Fretting.AllRinging(setup.StringCount)), width, height - lines.Count - said.Length);
        if (lines.Count + said.Length + board.Count > height)
        {
            lines.RemoveAll(line => line.Width == 0);
        }

        int left = height - lines.Count - said.Length - board.Count;
        return [.. lines, .. left >= 0 ? board : [], .. left > 0 ? new[] { FretboardDrawing.Legend(desk.Glyphs).OnScreen() } : [], .. said];
    }

    protected override void BeforeKey() => _notice = null;

    private void Start()
    {
        if (desk.Sessions.Resting is { } resting)
        {
            frame.Open(new SessionPage(frame, desk, resting));
            return;
        }

        Begin(Plan, "There is no drill to practise.");
    }

    // One plan of each for each visit: what is drawn is what Enter or n starts.
    private SessionPlan Plan => _plan ??= DailyPlanner.Plan(desk.Request());

    private SessionPlan Quiz => _quiz ??= QuizPlanner.Plan(desk.Request());

    public override void Attend(bool isAttending) => (_plan, _quiz) = (null, null);

    private Setup FirstSetup(SessionPlan plan) =>
        (desk.Sessions.Resting?.Open?.Planned ?? plan.All.FirstOrDefault())?.Item.Drill.Setup ?? desk.Shelf.Drills[0].Setup;

    private string? SoundNotice => desk.Sound.Notice is { } notice && !desk.Sound.IsAudible
        ? $"{notice}; no ear questions meanwhile"
        : desk.Sound.Notice;

    private IEnumerable<Line> Notices(int width)
    {
        string? noDrill = desk.Repertoire.Drills.IsEmpty && desk.Settings.Clamps != OwnClamps.Any
            ? $"No drill can be clamped with what the settings say that you own: clamps over {desk.Settings.Clamps} strings."
            : null;
        IEnumerable<string?> said = [.. notices(), settings.FaultsInShort, noDrill, SoundNotice, _notice];
        return said.OfType<string>().SelectMany(words => Line.Wrap(words, width, Tone.Wrong));
    }

    private void Begin(SessionPlan plan, string otherwise)
    {
        _notice = !plan.IsEmpty ? null : plan.WhyEmpty is { } why && !desk.Repertoire.Drills.IsEmpty ? $"Nothing to ask just now: {why}" : otherwise;
        if (!plan.IsEmpty)
        {
            frame.Open(WaitingPage.ToStart(frame, desk, plan));
        }
    }

    private Line StartLine(SessionPlan plan)
    {
        Line enter = Line.Of(" Enter  ", Tone.Key);
        if (desk.Sessions.Resting is { } resting)
        {
            return enter.And("Go on", Tone.Strong).And($"              {SessionInWords.InShort(resting, desk.Now)}", Tone.Quiet);
        }

        int fresh = plan.All.Count(planned => planned.Item is var item && !desk.Record.Memory.Items.ContainsKey(item.Key));
        if (plan.IsEmpty && !desk.Record.Memory.Items.IsEmpty)
        {
            return enter.And("The daily drill", Tone.Strong).And($"    done for today{(desk.NextDrill is { } next ? $"; next in the drills (d): {next.Title}" : "")}", Tone.Quiet);
        }

        return enter.And("The daily drill", Tone.Strong).And($"    {Counted.Of((int)desk.Settings.SessionLength.TotalMinutes, "minute")}: {plan.DueInAll} waiting, {fresh} unmet", Tone.Quiet);
    }
}
