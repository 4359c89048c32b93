using System.Globalization;
using Clampwise.Practice;
using Clampwise.Theory;
using ScottPlot;
using SkiaSharp;

namespace Clampwise.Charts;

/// <summary>Progress as pictures: recall and minutes by week, and what comes due.</summary>
public static class ProgressPlot
{
    private const int Width = 900;
    private const int Height = 900;
    private const int DaysShown = 30;

    /// <summary>The format that the ending of a file's name asks for.</summary>
    public static Result<PlotFormat> FormatOf(string path) => Path.GetExtension(path).ToLowerInvariant() switch
    {
        ".svg" => PlotFormat.Svg,
        ".png" => PlotFormat.Png,
        _ => new Fault($"a plot is written as .svg or .png, found '{path}'"),
    };

    /// <summary>Writes the plots of a report into a stream, and leaves it open; gives the number of plots.</summary>
    public static int Write(ProgressReport report, Stream stream, PlotFormat format)
    {
        Multiplot plots = Draw(report);
        if (format == PlotFormat.Svg)
        {
            using SKCanvas canvas = SKSvgCanvas.Create(new SKRect(0, 0, Width, Height), stream);
            plots.Render(canvas, new PixelRect(0, Width, Height, 0));
        }
        else
        {
            stream.Write(plots.Render(Width, Height).GetImageBytes(ImageFormat.Png));
        }

        return plots.GetPlots().Length;
    }

    private static Multiplot Draw(ProgressReport report)
    {
        var plots = new Multiplot();
        plots.AddPlots(3);
        Recall(plots.GetPlot(0), report);
        Minutes(plots.GetPlot(1), report);
        Due(plots.GetPlot(2), report);
        return plots;
    }

    private static void Recall(Plot plot, ProgressReport report)
    {
        plot.Title("recalled, by week");
        AddLines(plot, report, week => week.Recall, "recalled", foreseen: false);
        AddLines(plot, report, week => week.Foreseen, "as foreseen", foreseen: true);
        ScottPlot.Plottables.HorizontalLine wished = plot.Add.HorizontalLine(100 * report.Wish);
        wished.LegendText = "wished for";
        wished.LineWidth = 1;
        plot.ShowLegend();
        plot.YLabel("per cent");
        plot.Axes.SetLimitsY(0, 100);
        LabelWeeks(plot, report);
    }

    // A line for each run of weeks with a figure: what lies between is a gap.
    private static void AddLines(Plot plot, ProgressReport report, Func<WeekFigures, double?> share, string words, bool foreseen)
    {
        ScottPlot.Color? color = null;
        foreach ((double[] places, double[] heights) in Runs(report, share))
        {
            ScottPlot.Plottables.Scatter line = plot.Add.Scatter(places, heights);
            line.LegendText = color is null ? words : "";
            line.Color = color ?? line.Color;
            color = line.Color;
            if (foreseen)
            {
                // No dashes: the drawing library's SVG canvas has none, and says so on the terminal.
                line.LineWidth = 1;
                line.MarkerShape = MarkerShape.OpenCircle;
            }
        }
    }

    /// <summary>The weeks that have a figure, cut wherever one has none: their places and the figure in per cent.</summary>
    internal static IEnumerable<(double[] Places, double[] Heights)> Runs(ProgressReport report, Func<WeekFigures, double?> share) => report.Weeks
        .Select((week, place) => (Share: share(week), Place: place))
        .Where(week => week.Share is not null)
        .Select((week, index) => (week.Place, Height: 100 * week.Share!.Value, Run: week.Place - index))
        .GroupBy(week => week.Run)
        .Select(run => (run.Select(week => (double)week.Place).ToArray(), run.Select(week => week.Height).ToArray()));

    private static void Minutes(Plot plot, ProgressReport report)
    {
        plot.Title("minutes practised, by week");
        plot.Add.Bars([.. report.Weeks.Select(week => week.Practised.TotalMinutes)]);
        plot.YLabel("minutes");
        plot.Axes.SetLimitsY(0, 1.1 * Math.Max(1, report.Weeks.Select(week => week.Practised.TotalMinutes).DefaultIfEmpty(0).Max()));
        LabelWeeks(plot, report);
    }

    private static void Due(Plot plot, ProgressReport report)
    {
        plot.Title("coming due, by day");
        plot.Add.Bars([.. report.Due.Take(DaysShown).Select(day => (double)day.Count)]);
        plot.YLabel("items");
        plot.XLabel("days from today");
        plot.Axes.SetLimitsX(-1, DaysShown);
        plot.Axes.SetLimitsY(0, 1.1 * Math.Max(1, report.Due.Take(DaysShown).Select(day => day.Count).DefaultIfEmpty(0).Max()));
    }

    private static void LabelWeeks(Plot plot, ProgressReport report)
    {
        int step = Math.Max(1, report.Weeks.Length / 10);
        int[] places = [.. Enumerable.Range(0, report.Weeks.Length).Where(place => place % step == 0)];
        plot.Axes.Bottom.SetTicks(
            [.. places.Select(place => (double)place)],
            [.. places.Select(place => report.Weeks[place].Monday.Date.ToString("d MMM yy", CultureInfo.InvariantCulture))]);
    }
}
