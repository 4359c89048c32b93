using System.Xml.Linq;
using Clampwise.Practice;

namespace Clampwise.Charts.Tests;

public sealed class ProgressPlotTests : IDisposable
{
    private static readonly ProgressReport s_report = Report();
    private readonly string _folder = Directory.CreateTempSubdirectory("clampwise-plots").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void An_svg_is_well_formed_and_holds_the_three_plots()
    {
        string path = Path.Combine(_folder, "progress.svg");
        Save(s_report, path);
        XElement root = XDocument.Load(path).Root!;
        Assert.Equal("svg", root.Name.LocalName);
        string text = string.Concat(root.Descendants().Where(element => element.Name.LocalName == "text").Select(element => element.Value));
        Assert.Contains("recalled, by week", text);
        Assert.Contains("minutes practised, by week", text);
        Assert.Contains("coming due, by day", text);
        Assert.Contains("wished for", text);
    }

    // The eight bytes that start every PNG file (W3C PNG specification, section 5.2), then width and height in the header chunk.
    [Fact]
    public void A_png_is_one()
    {
        string path = Path.Combine(_folder, "progress.png");
        Save(s_report, path);
        byte[] bytes = File.ReadAllBytes(path);
        Assert.Equal([0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A], bytes[..8]);
        Assert.Equal(900, (bytes[18] << 8) + bytes[19]);
    }

    [Fact]
    public void Another_ending_is_refused() => Assert.Contains(".svg or .png", ProgressPlot.FormatOf("progress.gif").Fault.Message);

    [Fact]
    public void Nothing_practised_is_an_empty_plot()
    {
        string path = Path.Combine(_folder, "empty.png");
        Save(ProgressReport.Of([], MemoryState.Empty(FsrsSettings.Usual), PracticeDay.On(new DateOnly(2026, 3, 2))), path);
        Assert.NotEqual(0, new FileInfo(path).Length);
    }

    private static void Save(ProgressReport report, string path)
    {
        using FileStream stream = File.Create(path);
        Assert.Equal(3, ProgressPlot.Write(report, stream, ProgressPlot.FormatOf(path).Value));
    }

    private static ProgressReport Report()
    {
        var item = new ItemKey(new ShapeKey("E2 A2 D3 G3 B3 E4 + 3-5@2", "^ 0 0 4 2 0 0"), Direction.SeeShapeSayShapeName);
        var start = new DateTimeOffset(2026, 1, 5, 18, 0, 0, TimeSpan.Zero);
        LogEntry[] log = [.. Enumerable.Range(0, 40).Select(day => new Attempt(
            new EntryId(new Guid(day, 0, 0, new byte[8])), start.AddDays(day), start.AddDays(day).AddSeconds(-5), item, DrillId.Parse("first-six").Value,
            new SessionId(new Guid(day, 1, 0, new byte[8])), PracticeCalendar.Utc.DayOf(start.AddDays(day)), day % 5 == 0 ? Grade.Missed : Grade.Steady, day % 5 != 0))];
        return ProgressReport.Of(log, MemoryState.Rebuild(log, FsrsSettings.Usual), PracticeCalendar.Utc.DayOf(start.AddDays(41)));
    }
}
