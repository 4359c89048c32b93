using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Commands;

/// <summary>Figures of progress as plain lines.</summary>
internal static class ProgressText
{
    private const int DaysShown = 7;

    public static IEnumerable<string> Lines(ProgressReport report)
    {
        yield return $"{Fretboard.Spoken.Count(report.Days.Length, "day")} practised, {Minutes(report.Practised)} in all; {report.Asked} asked, {report.RightAnswers} right";
        yield return "";
        yield return "week of     days  minutes  asked  right  recalled";
        foreach (WeekFigures week in report.Weeks)
        {
            yield return $"{week.Monday}  {week.Days,4}  {week.Practised.TotalMinutes,7:0}  {week.Asked,5}  {week.RightAnswers,5}  {Percent(week.Recall),8}";
        }

        foreach (string line in Groups("by setup", [.. report.BySetup]).Concat(Groups("by direction", [.. report.ByDirection])))
        {
            yield return line;
        }

        yield return "";
        yield return $"due in the next days: {string.Join(", ", report.Due.Take(DaysShown).Select((day, ahead) => $"{(ahead == 0 ? "today" : $"+{ahead}")} {day.Count}"))}";
        foreach (string line in Confusions(report.Confusions))
        {
            yield return line;
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

    private static IEnumerable<string> Confusions(ConfusionMatrix matrix)
    {
        for (int right = 0; right < matrix.Names.Length; right++)
        {
            string[] taken = [.. Enumerable.Range(0, matrix.Names.Length)
                .Where(answered => answered != right && matrix[right, answered] > 0)
                .Select(answered => $"{matrix.Names[answered]} ({matrix[right, answered]})")];
            if (taken.Length > 0)
            {
                yield return $"{matrix.Names[right]} taken for {string.Join(", ", taken)}";
            }
        }
    }

    private static string Percent(double? share) => share is { } known ? $"{known * 100:0} %" : "-";

    private static string Minutes(TimeSpan time) => Counted.Of((int)Math.Round(time.TotalMinutes), "minute");
}
