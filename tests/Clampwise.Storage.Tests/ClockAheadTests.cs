using Clampwise.Practice;
using Microsoft.Extensions.Time.Testing;

namespace Clampwise.Storage.Tests;

public sealed class ClockAheadTests : IDisposable
{
    private readonly DataFolder _folder = new(Directory.CreateTempSubdirectory("clampwise-ahead").FullName);

    public void Dispose() => Directory.Delete(_folder.Root, recursive: true);

    [Fact]
    public void A_session_under_a_clock_a_year_ahead_hides_nothing_is_found_and_is_mended_by_asking()
    {
        DateTimeOffset now = Some.Start.AddDays(30);
        var time = new FakeTimeProvider(now);
        Attempt before = Some.Attempt(1);
        Attempt ahead = Some.Attempt(2) with { Item = before.Item, At = now.AddYears(1), AskedAt = now.AddYears(1), Day = before.Day + 395 };
        Attempt again = Some.Attempt(3) with { Item = before.Item, At = now, AskedAt = now, Day = before.Day + 30 };
        using ProgressStore store = ProgressStore.Open(_folder, time).Value;
        store.Append(before);
        store.Append(ahead);
        Assert.Equal(before.Day, store.LoadMemory(FsrsSettings.Usual).Items[before.Item].LastDay);
        CheckReport found = DataCheck.Run(store, new Backups(_folder, time), now);
        Assert.Contains("1 item was answered under a clock that was ahead", Assert.Single(found.Problems), StringComparison.Ordinal);
        store.Append(again);
        Assert.Equal(again.Day, store.LoadMemory(FsrsSettings.Usual).Items[before.Item].LastDay);
        Assert.True(DataCheck.Run(store, new Backups(_folder, time), now).IsGood);
        time.SetUtcNow(now.AddYears(2));
        Assert.Equal(ahead.Day, store.LoadMemory(FsrsSettings.Usual).Items[before.Item].LastDay);
    }
}
