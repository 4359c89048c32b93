using Clampwise.Practice;
using CsCheck;
using Microsoft.Extensions.Time.Testing;

namespace Clampwise.Storage.Tests;

/// <summary>Entries of one id that differ: what a log means, and what a merge keeps, is the same in every order and in any parts.</summary>
public class OneIdTests
{
    // Any entries, of which some bear the id, and often the time, of others.
    private static readonly Gen<LogEntry[]> s_logs = Gen.Select(Some.Entry.Array[1, 8], Gen.Int[0, 7].Array[8], Gen.Bool.Array[8]).Select((entries, same, atOnce) =>
        entries.Select((entry, place) => same[place] < entries.Length && same[place] != place
            ? entry with { Id = entries[same[place]].Id, At = atOnce[place] ? entries[same[place]].At : entry.At }
            : entry).ToArray());

    [Fact]
    public void The_entry_that_counts_is_the_same_in_every_order() => Gen.Select(s_logs, Gen.Int[0, 1000]).Holds((log, seed) =>
    {
        LogEntry[] shuffled = [.. log];
        new Random(seed).Shuffle(shuffled);
        Assert.Equal(Texts(EntryUnion.Of(log).Values), Texts(EntryUnion.Of(shuffled).Values));
        Assert.Equal(Texts(LogReading.Attempts(log)), Texts(LogReading.Attempts(shuffled)));
        Assert.Equal(Texts(LogReading.Attempts(log)), Texts(LogReading.Attempts(EntryUnion.Of(shuffled).Values)));
        Assert.Equal(LogReading.Weights(log)?.Values, LogReading.Weights(EntryUnion.Of(shuffled).Values)?.Values);
    });

    [Fact]
    public void A_log_and_what_was_merged_in_parts_mean_the_same() => Gen.Select(s_logs, Gen.Int[0, 8]).Holds((log, at) =>
    {
        using var one = new ScratchFolder();
        using ProgressStore store = ProgressStore.Open(one.Data, new FakeTimeProvider()).Value;
        int cut = Math.Min(at, log.Length);
        Assert.True(store.AddAll(log[cut..]).IsGood);
        Assert.True(store.AddAll(log[..cut]).IsGood);
        Assert.Equal(Texts(EntryUnion.Of(log).Values), Texts(store.ReadAll()));
        Assert.Equal(Texts(LogReading.Attempts(log)), Texts(LogReading.Attempts(store.ReadAll())));
    });

    private static IEnumerable<string> Texts(IEnumerable<LogEntry> entries) =>
        entries.Select(entry => System.Text.Encoding.UTF8.GetString(JournalLine.Json(entry))).Order(StringComparer.Ordinal);
}
