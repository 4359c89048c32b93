namespace Clampwise.Simulation;

/// <summary>The program's planner beside simple ones, at the same mean true recall of the same pool, for each learner.</summary>
public static class Table
{
    /// <summary>The days over which recall is compared.</summary>
    public const int From = 60;

    /// <summary>The last day.</summary>
    public const int To = 150;

    private static readonly double[] s_wishes = [0.75, 0.8, 0.85, 0.9, 0.93, 0.95];
    private static readonly double[] s_perDay = [3, 6, 10, 15, 22, 30, 40, 52];
    private static readonly double[] s_stretches = [0.4, 0.8, 1.6, 3.2, 6.4, 12.8];

    /// <summary>Everything for one learner and seed.</summary>
    public static Row Of(string name, Func<ITruth> truth, Pool pool, int seed)
    {
        Run With(IPlans plans, double wish = 0.9) => new Run(pool, truth(), plans, seed, wish).Go(To);
        Run[] shipped = [.. s_wishes.Select(wish => With(new Shipped(), wish))];
        var opening = shipped[Array.IndexOf(s_wishes, 0.9)].Opening;
        return new Row(
            name,
            shipped[Array.IndexOf(s_wishes, 0.85)],
            shipped[Array.IndexOf(s_wishes, 0.9)],
            new Curve(shipped),
            new Curve(s_perDay.Select(perDay => With(new RoundRobin(opening, perDay)))),
            new Curve(s_stretches.Select(stretch => With(new Ladder(opening, stretch, fallsToFirst: true)))),
            new Curve(s_stretches.Select(stretch => With(new Ladder(opening, stretch, fallsToFirst: false)))),
            new Curve(s_perDay.Select(perDay => With(new Lottery(opening, perDay, seed)))));
    }
}
