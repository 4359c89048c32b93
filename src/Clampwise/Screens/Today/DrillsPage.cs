using System.Collections.Immutable;
using Clampwise.Charts;
using Clampwise.Look;
using Clampwise.Practice;
using Clampwise.Screens.Session;
using Clampwise.Terminal;

namespace Clampwise.Screens;

/// <summary>All drills, with how much of each is known; any one can be practised by itself.</summary>
internal sealed class DrillsPage(Frame frame, ScreenDesk desk) : Page
{
    private readonly ImmutableArray<Drill> _drills = desk.Shelf.Drills;
    private const int LyingRows = 8;
    private const int WordRows = 4;
    private const int TitleWidth = 46;
    private const string Gap = "  ";

    // The longest of what is said of a drill; a narrow screen cuts titles, not that.
    private const string OtherClamp = "takes another clamp";
    private int _at;
    private string? _notice;

    public override string Title => "drills";

    public override IReadOnlyList<PageKey> Keys =>
    [
        PageKey.On(KeyPress.Enter, "practise this one", Practise),
        PageKey.Steps(KeyPress.Up, KeyPress.Down, "choose", step => _at = Math.Clamp(_at + step, 0, _drills.Length - 1)),
        PageKey.On(KeyPress.Esc, "back", frame.Close),
    ];

    public override IReadOnlyList<string> Help { get; } =
    [
        "The daily drill opens one drill after the other: the next one comes when every shape of those before it is known by both names: recalled without choices and help on two later days, and not missed since. Enter practises the drill under the cursor alone, and from then on it belongs to the daily drill too.",
        "Drills of your own are TOML files in the drills folder of your data; they are shown here like all others.",
    ];

    public override IReadOnlyList<Line> Draw(int width, int height)
    {
        HashSet<DrillId> open = [.. desk.Repertoire.Drills.Select(drill => drill.Id)];
        HashSet<ShapeKey> met = [.. desk.Record.Memory.Items.Keys.Select(key => key.Shape)];
        int room = Math.Max(1, height - 13);
        int top = Math.Clamp(_at - room + 1, 0, Math.Max(0, _drills.Length - room));
        Line[] list = [.. _drills.Skip(top).Take(room).Select((drill, index) => DrillLine(drill, top + index == _at, width, open, met))];
        return
        [
            .. list,
            More(top, _drills.Length - top - list.Length),
            Line.Of($"{_drills[_at].Setup}", Tone.Held),
            .. desk.Draw(new FretboardPicture(_drills[_at].Setup, Fretboard.Fretting.AllRinging(_drills[_at].Setup.StringCount)), width, Math.Max(LyingRows, height - list.Length - WordRows)),
            .. _notice is { } said ? Line.Wrap(said, width, Tone.Wrong) : Line.Wrap(Missing(open, met) ?? _drills[_at].Note ?? "", width, Tone.Quiet).Take(2),
        ];
    }

    protected override void BeforeKey() => _notice = null;

    private void Practise()
    {
        SessionPlan plan = DailyPlanner.Plan(desk.Request(), _drills[_at]);
        _notice = plan.IsEmpty ? $"Nothing to ask just now: {plan.WhyEmpty}" : null;
        if (!plan.IsEmpty)
        {
            frame.Replace(WaitingPage.ToStart(frame, desk, plan));
        }
    }

    // What the next drill still waits for, said where it stands.
    private string? Missing(HashSet<DrillId> open, HashSet<ShapeKey> met)
    {
        if (desk.NextDrill?.Id != _drills[_at].Id || met.Count == 0)
        {
            return null;
        }

        string[] unknown = [.. _drills.Where(drill => open.Contains(drill.Id)).SelectMany(drill => DrillPath.Unknown(drill, desk.Record.Memory)).Select(voicing => voicing.Voicing.ShapeName).Distinct()];
        string few = string.Join(", ", unknown.Take(4)) + (unknown.Length > 4 ? $" and {unknown.Length - 4} more" : "");
        return $"Opens when {few} {(unknown.Length == 1 ? "is" : "are")} known by both names; Enter opens it now.";
    }

    private static Line More(int above, int beneath) => (above, beneath) switch
    {
        (0, 0) => Line.Empty,
        (_, 0) => Line.Of($"   {above} more above", Tone.Quiet),
        (0, _) => Line.Of($"   {beneath} more below", Tone.Quiet),
        _ => Line.Of($"   {above} more above, {beneath} more below", Tone.Quiet),
    };

    private Line DrillLine(Drill drill, bool isHere, int width, HashSet<DrillId> open, HashSet<ShapeKey> met)
    {
        bool isBegun = drill.Voicings.Any(voicing => met.Contains(voicing.Key));
        int known = drill.Voicings.Length - DrillPath.Unknown(drill, desk.Record.Memory).Length;
        string state = isBegun ? $"{known} of {drill.Voicings.Length} known" : open.Contains(drill.Id) ? "comes next"
            : desk.Settings.Clamps.Fit(drill.Setup) ? "not open yet" : OtherClamp;
        Line mark = Line.Of(isHere ? " > " : "   ", Tone.Key);
        int room = Math.Min(TitleWidth, width - mark.Width - Gap.Length - OtherClamp.Length);
        Line title = Line.Of(drill.Title, isHere ? Tone.Cursor : Tone.Plain).Cut(room, desk.Glyphs.More);
        return mark.And(title).And(new string(' ', room - title.Width), isHere ? Tone.Cursor : Tone.Plain).And($"{Gap}{state}", Tone.Quiet);
    }
}
