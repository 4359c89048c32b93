using Clampwise.Screens;
using Clampwise.Storage;
using Microsoft.Extensions.Time.Testing;

namespace Clampwise.Tests.Screens;

public class FailureReportTests
{
    [Fact]
    public void A_failure_is_written_down_and_said_in_one_line()
    {
        using var folder = new ScratchFolder();
        var report = new FailureReport(new DataFolder(folder.Root), new FakeTimeProvider(new DateTimeOffset(2026, 3, 2, 18, 0, 0, TimeSpan.Zero)));
        string said = report.Write(new InvalidOperationException("made to fail"));
        Assert.Equal($"clampwise: the program failed; everything answered so far is kept. What helps to mend it stands in {report.Path}", said);
        Assert.Contains("2026-03-02 18:00:00Z", File.ReadAllText(report.Path));
        Assert.Contains("made to fail", File.ReadAllText(report.Path));
    }

    [Fact]
    public void A_failure_that_cannot_be_written_down_is_said_all_the_same()
    {
        using var folder = new ScratchFolder();
        var report = new FailureReport(new DataFolder(Path.Combine(folder.Root, "missing")), TimeProvider.System);
        Assert.EndsWith("is kept. InvalidOperationException: made to fail", report.Write(new InvalidOperationException("made to fail")), StringComparison.Ordinal);
    }
}
