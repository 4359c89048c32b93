using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>A chord that a setup holds.</summary>
/// <param name="Symbol">Its first name at concert pitch, by bass and pitch classes.</param>
/// <param name="Voicings">How many voicings have it.</param>
/// <param name="EasiestPoints">The difficulty of the easiest, to a tenth of a point.</param>
public sealed record ChordCount(ChordSymbol Symbol, int Voicings, double EasiestPoints)
{
    internal static ImmutableArray<ChordCount> Gather(int[] counts, double[] easiest, SetReadings readings) =>
    [
        .. Enumerable.Range(0, counts.Length)
            .Where(key => counts[key] > 0 && readings.First(key).Quality is not null)
            .Select(key => new ChordCount(readings.First(key).Symbol!, counts[key], easiest[key]))
            .GroupBy(one => one.Symbol)
            .Select(same => new ChordCount(same.Key, same.Sum(one => one.Voicings), same.Min(one => one.EasiestPoints)))
            .OrderBy(one => one.EasiestPoints)
            .ThenByDescending(one => one.Voicings),
    ];
}
