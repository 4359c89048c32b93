using System.Collections.Immutable;
using Clampwise.Fretboard;

namespace Clampwise.Practice;

/// <summary>
/// Plans the daily drill as blocks of one setup: what has fallen lowest until the mean recall is at the wished level again, what was confused
/// side by side, and new items at the pace that this player's first answers bear. When that is done the day is done.
/// </summary>
public static class DailyPlanner
{
    /// <summary>The plan.</summary>
    public static SessionPlan Plan(PlanRequest request) =>
        Filled(request) is var plan && plan.IsEmpty ? plan with { WhyEmpty = request.WhyEmpty } : plan;

    /// <summary>
    /// The plan of one drill alone, under its title: what is due and new in it, then the rest while there is time. To choose a drill that has
    /// only changes in time is to ask for them.
    /// </summary>
    public static SessionPlan Plan(PlanRequest request, Drill only)
    {
        bool isChanges = only.Directions.All(direction => direction == Direction.ChangeInTime);
        return Plan(request with
        {
            Repertoire = Repertoire.Of([only]),
            Directions = isChanges ? [.. request.Directions, Direction.ChangeInTime] : request.Directions,
            FillsTime = true,
        }) with
        { Title = only.Title };
    }

    private static SessionPlan Filled(PlanRequest request)
    {
        PracticeItem[] items = [.. request.Items];
        var work = new DailyWork(request, items);
        var day = new DayChoice(work, request);
        ImmutableArray<PlannedItem> planned = [.. day.Setups.SelectMany(setup => Block(day, setup))];
        return new SessionPlan(SessionKind.Daily, planned, [], request.Length)
        {
            DueInAll = work.Due.Length,
            ExpectedRight = planned.Select(one => Prediction.Known(one.Item, request.Memory, request.Today)).DefaultIfEmpty().Average(),
            Backlog = day.Backlog,
        };
    }

    private static ImmutableArray<PlannedItem> Block(DayChoice day, Setup? setup)
    {
        PlannedItem[] chosen = [.. day.Chosen.Where(planned => setup is null || planned.Item.Drill.Setup.Equals(setup))];
        int shapes = chosen.Select(planned => planned.Item.Key.Shape).Distinct().Count();
        return new Interleaver(Spacing.For(shapes), day.ContrastOf).Order(chosen);
    }
}
