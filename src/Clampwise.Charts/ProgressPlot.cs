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
        WeekFigures[] weeks = [.. report.Weeks.Where(week => week.Recall is not null)];
        plot.Title("recalled, by week");
        ScottPlot.Plottables.Scatter recalled = AddLine(plot, report, weeks, week => week.Recall!.Value);
        recalled.LegendText = "recalled";
        WeekFigures[] foreseen = [.. weeks.Where(week => week.Foreseen is not null)];
        ScottPlot.Plottables.Scatter model = AddLine(plot, report, foreseen, week => week.Foreseen!.Value);
        model.LegendText = "as foreseen";
        // No dashes: the drawing library's SVG canvas has none, and says so on the terminal.
        model.LineWidth = 1;
        model.MarkerShape = MarkerShape.OpenCircle;
        plot.ShowLegend();
        plot.YLabel("per cent");
        plot.Axes.SetLimitsY(0, 100);
        LabelWeeks(plot, report);
    }

    private static ScottPlot.Plottables.Scatter AddLine(Plot plot, ProgressReport report, WeekFigures[] weeks, Func<WeekFigures, double> share)
    {
        double[] places = [.. weeks.Select(week => (double)report.Weeks.IndexOf(week))];
        double[] heights = [.. weeks.Select(week => 100 * share(week))];
        return plot.Add.Scatter(places, heights);
    }

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
