using System.Collections.Immutable;
using Clampwise.Practice;

namespace Clampwise.Storage.Tests;

/// <summary>Equality of what is made of collections, which records compare by reference.</summary>
internal static class Same
{
    public static void Entry(LogEntry expected, LogEntry found)
    {
        if (expected is WeightsChosen one && found is WeightsChosen other)
        {
            Assert.Equal(one.Weights.AsEnumerable(), other.Weights.AsEnumerable());
            Assert.Equal(one with { Weights = [] }, other with { Weights = [] });
        }
        else
        {
            Assert.Equal(expected, found);
        }
    }

    public static void Log(IEnumerable<LogEntry> expected, IEnumerable<LogEntry> found)
    {
        LogEntry[] ours = [.. expected.OrderBy(entry => entry.Id)];
        LogEntry[] theirs = [.. found.OrderBy(entry => entry.Id)];
        Assert.Equal(ours.Select(entry => entry.Id), theirs.Select(entry => entry.Id));
        for (int i = 0; i < ours.Length; i++)
        {
            Entry(ours[i], theirs[i]);
        }
    }

    public static void Memory(MemoryState expected, MemoryState found)
    {
        Assert.Equal((expected.LatestAt, expected.AttemptCount), (found.LatestAt, found.AttemptCount));
        Assert.Equal(expected.Model.Settings, found.Model.Settings);
        Assert.Equal(Sorted(expected.Items), Sorted(found.Items));
        Assert.Equal(Sorted(expected.UsualTimes), Sorted(found.UsualTimes));
        Assert.Equal(Sorted(expected.Skills), Sorted(found.Skills));
        Assert.Equal(Sorted(expected.Confusions), Sorted(found.Confusions));
        Assert.Equal(expected.Correction, found.Correction);
        Assert.Equal(expected.FirstAnswers, found.FirstAnswers);
    }

    private static IEnumerable<KeyValuePair<TKey, TValue>> Sorted<TKey, TValue>(ImmutableDictionary<TKey, TValue> all) where TKey : notnull =>
        all.OrderBy(pair => pair.Key.ToString(), StringComparer.Ordinal);
}
