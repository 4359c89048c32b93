using Clampwise.Look;
using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Commands;

/// <summary>Figures of progress as plain lines.</summary>
internal static class ProgressText
{
    private const int DaysShown = 7;
    private const int ConfusionsShown = 12;

    public static IEnumerable<string> Lines(ProgressReport report)
    {
        yield return ProgressWords.StillHad(report.StillHad);
        yield return $"{Fretboard.Spoken.Count(report.Days.Length, "day")} practised, {Minutes(report.Practised)} in all; {report.Asked} asked, {report.RightAnswers} right";
        yield return "";
        yield return $"week of     days  minutes  asked  right  recalled ({Percent(report.Wish)} wished)";
        foreach (WeekFigures week in report.Weeks)
        {
            yield return week.Days == 0 ? $"{week.Monday}     -" : $"{week.Monday}  {week.Days,4}  {week.Practised.TotalMinutes,7:0}  {week.Asked,5}  {week.RightAnswers,5}  {Percent(week.Recall),8}";
        }

        foreach (string line in Groups("by setup", [.. report.BySetup]).Concat(Groups("by direction", [.. report.ByDirection])))
        {
            yield return line;
        }

        yield return "";
        yield return $"due in the next days: {string.Join(", ", report.Due.Take(DaysShown).Select((day, ahead) => $"{(ahead == 0 ? "today" : $"+{ahead}")} {day.Count}"))}";
        foreach (ConfusedShapes pair in report.ByShape.Take(ConfusionsShown))
        {
            yield return ProgressWords.TakenFor(pair);
        }
    }

    private static IEnumerable<string> Groups(string title, GroupFigures[] groups)
    {
        yield return "";
        yield return $"{title,-44} asked  right  items  due  recall tomorrow";
        foreach (GroupFigures group in groups)
        {
            yield return $"{group.Name,-44} {group.Asked,5}  {group.RightAnswers,5}  {group.Items,5}  {group.Due,3}  {Percent(group.RecallTomorrow),15}";
        }
    }

    private static string Percent(double? share) => share is { } known ? $"{known * 100:0} %" : "-";

    private static string Minutes(TimeSpan time) => Counted.Of((int)Math.Round(time.TotalMinutes), "minute");
}
