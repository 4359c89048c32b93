using Clampwise.Look;
using Clampwise.Practice;
using Clampwise.Terminal;
using Clampwise.Theory;

namespace Clampwise.Screens;

/// <summary>How practice has gone: recall by week, what comes due, by setup and direction, what is taken for what.</summary>
internal sealed class ProgressPage : Page
{
    private const int BarWidth = 20;
    private const int WeeksShown = 6;
    private const int DaysShown = 7;
    private const int ConfusionsShown = 8;
    private readonly Frame _frame;
    private readonly ScreenDesk _desk;
    private readonly ProgressReport _report;
    private int _top;

    public ProgressPage(Frame frame, ScreenDesk desk)
    {
        (_frame, _desk) = (frame, desk);
        _report = ProgressReport.Of(desk.Record.Log.ReadAll(), desk.Record.Memory, desk.Today);
    }

    public override string Title => "progress";

    public override IReadOnlyList<PageKey> Keys => [PageKey.Scroll(by => _top += by), PageKey.On('m', "map", () => _frame.Open(new MapPage(_frame, _desk))), PageKey.On(KeyPress.Esc, "back", _frame.Close)];

    public override IReadOnlyList<string> Help { get; } =
    [
        "Still had counts the first answers of a day to what had been asked on an earlier one, given without choices and without help. Recalled, by week, counts all first answers of a later day; the mark on the bars is the recall that you wish for. Weeks without practice stand empty: nobody is in debt. m is the map of shapes.",
    ];

    public override IReadOnlyList<Line> Draw(int width, int height)
    {
        if (_report.Days.IsEmpty)
        {
            return [Line.Empty, Line.Of("Nothing practised yet.", Tone.Strong), Line.Of("After the first session its figures stand here.", Tone.Quiet)];
        }

        Line[] lines =
        [
            Line.Of(ProgressWords.StillHad(_report.StillHad), Tone.Strong),
            Line.Of($"{Fretboard.Spoken.Count(_report.Days.Length, "day")}, {Counted.Of((int)Math.Round(_report.Practised.TotalMinutes), "minute")}, {_report.Asked} asked, {_report.RightAnswers} right", Tone.Strong),
            Line.Empty,
            Line.Of($"week of     days  min  asked  recalled, of {_report.Wish * 100:0} % wished", Tone.Quiet),
            .. _report.Weeks.TakeLast(WeeksShown).Select(WeekLine),
            Line.Empty,
            Line.Of("coming due", Tone.Quiet),
            .. _report.Due.Take(DaysShown).Select(DueLine),
            Line.Empty,
            .. Groups("by direction", _report.ByDirection, width),
            Line.Empty,
            .. Groups("by setup", _report.BySetup, width),
            .. Confusions(),
        ];
        _top = Math.Clamp(_top, 0, Math.Max(0, lines.Length - height));
        return lines[_top..];
    }

    private Line WeekLine(WeekFigures week) => week.Days == 0 ? Line.Of($"{week.Monday}     -", Tone.Quiet) : Line.Of($"{week.Monday}  {week.Days,4}  {week.Practised.TotalMinutes,3:0}  {week.Asked,5}  ")
        .And(week.Recall is { } recall ? Bar(recall, _report.Wish).And($" {recall * 100:0} %") : Line.Of("-", Tone.Quiet));

    private Line DueLine(DueDay day, int ahead)
    {
        int most = Math.Max(1, _report.Due.Take(DaysShown).Max(due => due.Count));
        return Line.Of($"{(ahead == 0 ? "today" : $"in {Fretboard.Spoken.Count(ahead, "day")}"),-13}  ").And(Bar((double)day.Count / most)).And($" {day.Count}");
    }

    // Where there is no room for both, the figures stay and the bar goes.
    private IEnumerable<Line> Groups(string title, IEnumerable<GroupFigures> groups, int width) => groups
        .Select(group => Line.Of($"{group.Name,-42}").And(width < 42 + BarWidth + 16 ? Line.Empty : Bar(group.RecallTomorrow)).And($" {group.RecallTomorrow * 100:0} %  {Counted.Of(group.Items, "item")}"))
        .Prepend(Line.Of($"{title,-42}recall tomorrow", Tone.Quiet));

    private Line[] Confusions()
    {
        Line[] lines = [.. _report.ByShape.Take(ConfusionsShown).Select(pair => Line.Of(ProgressWords.TakenFor(pair)))];
        return lines.Length == 0 ? [] : [Line.Empty, Line.Of("told apart badly", Tone.Quiet), .. lines];
    }

    // The level wished for is a mark on the bar.
    private Line Bar(double share, double wish)
    {
        int full = (int)Math.Round(BarWidth * Math.Clamp(share, 0, 1));
        int mark = Math.Min(BarWidth - 1, (int)(BarWidth * wish));
        return Line.Of(new string(_desk.Glyphs.Full, Math.Min(full, mark)), Tone.Right).And(new string(_desk.Glyphs.Blank, Math.Max(0, mark - full)), Tone.Quiet)
            .And("|", Tone.Strong)
            .And(new string(_desk.Glyphs.Full, Math.Max(0, full - mark - 1)), Tone.Right).And(new string(_desk.Glyphs.Blank, BarWidth - Math.Max(mark + 1, full)), Tone.Quiet);
    }

    private Line Bar(double share)
    {
        int full = (int)Math.Round(BarWidth * Math.Clamp(share, 0, 1));
        return Line.Of(new string(_desk.Glyphs.Full, full), Tone.Right).And(new string(_desk.Glyphs.Blank, BarWidth - full), Tone.Quiet);
    }
}
