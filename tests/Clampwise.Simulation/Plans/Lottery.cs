using Clampwise.Practice;

namespace Clampwise.Simulation;

/// <summary>So many questions a day, drawn by chance from three setups.</summary>
/// <param name="opening">The day on which each item is first asked.</param>
/// <param name="perDay">Questions a day; parts of one add up.</param>
/// <param name="seed">Seed of the draw.</param>
public sealed class Lottery(IReadOnlyDictionary<ItemKey, int> opening, double perDay, int seed) : Simple(opening)
{
    private readonly Random _random = new(seed);

    /// <inheritdoc/>
    protected override IEnumerable<PracticeItem> Due(IReadOnlyList<PracticeItem> asked, int day)
    {
        PracticeItem[] drawn = [.. asked.GroupBy(item => item.Drill.Setup.ToString()).OrderBy(_ => _random.NextDouble()).Take(3).SelectMany(group => group)];
        _random.Shuffle(drawn);
        return drawn.Take((int)Math.Floor((day + 1) * perDay) - (int)Math.Floor(day * perDay));
    }
}
