using System.Globalization;

namespace Clampwise.Simulation;

/// <summary>The table in words: each learner's mean over the seeds.</summary>
public static class Report
{
    private static readonly int[] s_days = [7, 30, 90, 150];

    /// <summary>Lines of a table in Markdown.</summary>
    public static IEnumerable<string> Of(IReadOnlyList<Row> rows)
    {
        yield return "| learner | asked .85 | asked .90 | 1-150 of robin .85/.90 | of better ladder | of lottery | 60-150 of robin .85/.90 | of better ladder | day 30 over robin |";
        yield return "|---|---|---|---|---|---|---|---|---|";
        foreach (IGrouping<string, Row> one in rows.GroupBy(row => row.Name))
        {
            Row[] all = [.. one];
            yield return $"| {one.Key} | {Range(all, row => Recall(row.Asked85))} | {Range(all, row => Recall(row.Asked90))} "
                + $"| {Both(all, (row, recall) => row.OfRobin(recall, 1))} | {Both(all, (row, recall) => row.OfLadder(recall, 1))} | {Both(all, (row, recall) => row.OfLottery(recall, 1))} "
                + $"| {Both(all, (row, recall) => row.OfRobin(recall, Table.From))} | {Both(all, (row, recall) => row.OfLadder(recall, Table.From))} | {Signed(all, row => row.OverRobinOnDay30)} |";
        }

        yield return "";
        yield return "| learner, asked .90 | true recall of what is opened on day 7, 30, 90, 150 | of everything | shapes, as a sum | questions, minutes, minutes on what is known at 95 %: days 1-59 | days 60-150 | all asked by day |";
        yield return "|---|---|---|---|---|---|---|";
        foreach (IGrouping<string, Row> one in rows.GroupBy(row => row.Name))
        {
            Run[] runs = [.. one.Select(row => row.Asked90)];
            yield return $"| {one.Key} | {OnDays(runs, day => day.Opened, "0.00")} | {OnDays(runs, day => day.All, "0.00")} | {OnDays(runs, day => day.Shapes, "0")} "
                + $"| {Spent(runs, 1, Table.From - 1)} | {Spent(runs, Table.From, Table.To)} | {Text(runs.Average(run => run.Opening.Values.Max() + 1), "0")} |";
        }
    }

    private static double? Recall(Run run) => run.Recall(Table.From, Table.To);

    private static string OnDays(Run[] runs, Func<DayFigures, double> figure, string form) =>
        string.Join(" ", s_days.Select(day => Text(runs.Average(run => figure(run.Days[day - 1])), form)));

    private static string Spent(Run[] runs, int from, int to)
    {
        double Sum(Func<DayFigures, double> figure) => runs.Average(run => run.Days.Skip(from - 1).Take(to - from + 1).Sum(figure));
        return $"{Text(Sum(day => day.Questions), "0")}, {Text(Sum(day => day.Minutes), "0")}, {Text(Sum(day => day.OnKnown), "0")}";
    }

    private static string Range(Row[] rows, Func<Row, double?> figure) =>
        $"{Text(rows.Min(figure), "0.00#")} to {Text(rows.Max(figure), "0.00#")}";

    private static string Both(Row[] rows, Func<Row, double, double?> figure) => $"{Mean(rows, row => figure(row, .85))} / {Mean(rows, row => figure(row, .9))}";

    // A level that no setting reaches in some seed is left out there; with none at all it says so.
    private static string Mean(Row[] rows, Func<Row, double?> figure) => Text(rows.Average(figure), "0.00");

    private static string Signed(Row[] rows, Func<Row, double?> figure) => Text(rows.Average(figure), "+0.000;-0.000");

    private static string Text(double? number, string form) => number?.ToString(form, CultureInfo.InvariantCulture) ?? "out of reach";
}
