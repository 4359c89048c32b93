namespace Clampwise.Practice;

/// <summary>Which new items a session takes in, and how many.</summary>
internal static class NewItems
{
    // Where in that range the pace rises from half to the whole, and how many a minute of the session that is: tried on simulated learners.
    private const double MostAMinute = 1.35;
    private const double LeastShare = 0.5;
    private const double NoneBelow = 0.5;
    private const double AllFrom = 0.85;
    private const int ShapesOf = 3;

    /// <summary>
    /// How many a day bears: the more of this player's first answers of a later day go right, the more; 80 to 90 % right make the best practice
    /// (Wilson et al. 2019, The eighty five percent rule for optimal learning, Nature Communications 10).
    /// </summary>
    public static int Allowance(PlanRequest request)
    {
        double share = Math.Clamp((request.Memory.FirstAnswers.Right - NoneBelow) / (AllFrom - NoneBelow), LeastShare, 1);
        return Math.Max(1, (int)(request.Length.TotalMinutes * MostAMinute * share));
    }

    /// <summary>
    /// The new items in the order in which to take them in. The other name of a shape comes in the next session with it; then two directions of
    /// shapes that were met to each new shape, those directions first that have come least often, each shape once a day while others are left; a first day has other names and other directions too.
    /// </summary>
    public static IEnumerable<PracticeItem> InOrder(IEnumerable<PracticeItem> items, MemoryState memory, PracticeDay today)
    {
        var metOn = new Dictionary<ShapeKey, PracticeDay>();
        var asked = new Dictionary<Direction, int>();
        foreach ((ItemKey key, ItemMemory item) in memory.Items)
        {
            asked[key.Direction] = asked.GetValueOrDefault(key.Direction) + 1;
            metOn[key.Shape] = metOn.TryGetValue(key.Shape, out PracticeDay day) && day > item.FirstDay ? day : item.FirstDay;
        }

        PracticeItem[] fresh = [.. items.Where(item => !memory.Items.ContainsKey(item.Key))];
        ILookup<bool, PracticeItem> byMet = fresh.ToLookup(item => metOn.ContainsKey(item.Key.Shape));
        PracticeItem[] further = [.. byMet[true].Where(item => metOn[item.Key.Shape] < today)];
        PracticeItem[] names = [.. further.Where(IsOtherName)];
        HashSet<ShapeKey> named = [.. names.Select(item => item.Key.Shape)];
        PracticeItem[] others = [.. Balanced(further.Where(item => !named.Contains(item.Key.Shape)), asked).DistinctBy(item => item.Key.Shape)];
        PracticeItem[] shapes = [.. byMet[false].DistinctBy(item => item.Key.Shape).Select(item => FirstOf(item, byMet[false]))];
        return names.Concat(Mixed(others, shapes)).Concat(byMet[false].Where(IsOtherName)).Concat(further).Concat(Balanced(byMet[false], asked)).Distinct();
    }

    private static bool IsOtherName(PracticeItem item) => item.Key.Direction == Direction.SeeShapeSaySoundingName;

    // A shape that was never met is seen and named first: nobody can place or hear what was never shown.
    private static PracticeItem FirstOf(PracticeItem any, IEnumerable<PracticeItem> unmet) =>
        any.Key.Direction == Directions.First ? any : unmet.FirstOrDefault(item => item.Key == any.Key with { Direction = Directions.First }) ?? any;

    // The direction that has come least often first, one item of each in turn.
    private static IEnumerable<PracticeItem> Balanced(IEnumerable<PracticeItem> items, Dictionary<Direction, int> asked) => items
        .GroupBy(item => item.Key.Direction)
        .SelectMany(group => group.Select((item, place) => (item, rank: asked.GetValueOrDefault(group.Key) + place)))
        .OrderBy(pair => pair.rank).Select(pair => pair.item);

    private static IEnumerable<PracticeItem> Mixed(PracticeItem[] others, PracticeItem[] shapes) =>
        others.Select((item, place) => (item, place: (place + 0.5) / (ShapesOf - 1)))
            .Concat(shapes.Select((item, place) => (item, place: place + 0.25)))
            .OrderBy(pair => pair.place).Select(pair => pair.item);
}
