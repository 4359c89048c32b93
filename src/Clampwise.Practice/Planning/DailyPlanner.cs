using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>Plans the daily drill: warm-up, what is due in the order that saves most, weak, new, contrasts, an easy close.</summary>
public static class DailyPlanner
{
    private const int WarmUps = 2;
    private const int CloseCandidates = 6;
    private const double SolidFrom = 0.95;
    private const double WeakShare = 0.06;
    private const double BacklogFrom = 1.5;

    /// <summary>The plan.</summary>
    public static SessionPlan Plan(PlanRequest request) =>
        Filled(request) is var plan && plan.IsEmpty ? plan with { WhyEmpty = request.WhyEmpty } : plan;

    private static SessionPlan Filled(PlanRequest request)
    {
        PracticeItem[] items = [.. request.Items];
        if (items.Length == 0)
        {
            return new SessionPlan(SessionKind.Daily, [], [], request.Length);
        }

        var work = new DailyWork(request, items);
        var random = new Random(request.Seed);
        PracticeItem[] solid = work.Easy(SolidFrom, random);
        int warmUps = Math.Clamp(solid.Length - SessionPlan.Closers, 0, WarmUps);
        PlannedItem[] warm = [.. solid.TakeLast(warmUps).Select(item => new PlannedItem(item, SessionPart.WarmUp))];
        PlannedItem[] close = [.. solid.SkipLast(warmUps).Take(CloseCandidates).Select(item => new PlannedItem(item, SessionPart.Close))];
        PlannedItem[] main = [.. Main(work).ExceptBy(close.Concat(warm).Select(planned => planned.Item.Key), planned => planned.Item.Key)];
        var interleaver = new Interleaver(work.Spacing, work.ContrastOf);
        ImmutableArray<PlannedItem> opening = interleaver.Order(warm, []);
        ImmutableArray<PlannedItem> middle = [.. interleaver.Order(main, opening, Fillers(work, main)).Take(work.Capacity)];
        return new SessionPlan(SessionKind.Daily, [.. opening, .. middle], [.. close], request.Length)
        {
            DueInAll = work.AllDue.Length,
            ExpectedRight = opening.Concat(middle).Select(planned => Prediction.Known(planned.Item, request.Memory, request.Today)).DefaultIfEmpty().Average(),
            Backlog = IsBacklog(work) ? BacklogOf(work, middle) : null,
        };
    }

    /// <summary>The plan of one drill alone, under its title. To choose a drill that has only changes in time is to ask for them.</summary>
    public static SessionPlan Plan(PlanRequest request, Drill only)
    {
        bool isChanges = only.Directions.All(direction => direction == Direction.ChangeInTime);
        return Plan(request with
        {
            Repertoire = Repertoire.Of([only]),
            Directions = isChanges ? [.. request.Directions, Direction.ChangeInTime] : request.Directions,
        }) with
        { Title = only.Title };
    }

    private static IEnumerable<PlannedItem> Main(DailyWork work)
    {
        PlannedItem[] due = [.. work.Due.Take(work.Capacity).Select(item => new PlannedItem(item, SessionPart.Due))];
        int room = work.Capacity - due.Length;
        PlannedItem[] weak = [.. work.Weak().Take(Math.Min(room, (int)(work.Capacity * WeakShare))).Select(item => new PlannedItem(item, SessionPart.Weak))];
        int fresh = IsBacklog(work) ? 0 : NewItems.Allowance(work.Capacity, work.DueByDay);
        PlannedItem[] added = [.. work.New().Take(Math.Min(room - weak.Length, fresh)).Select(item => new PlannedItem(item, SessionPart.New))];
        PlannedItem[] chosen = [.. Spread(due, [.. weak, .. added])];
        PlannedItem[] withContrasts = [.. work.AddContrasts(chosen)];
        // What comes again in the session takes room too: about one question for each new item.
        int left = work.Capacity - withContrasts.Length - added.Length;
        IEnumerable<PlannedItem> ahead = work.Ahead(withContrasts).Take(Math.Max(0, left)).Select(item => new PlannedItem(item, SessionPart.Ahead));
        return withContrasts.Concat(ahead);
    }

    // Few shapes in many directions would stand too close together: others step between them.
    private static IEnumerable<PlannedItem> Fillers(DailyWork work, PlannedItem[] chosen)
    {
        IEnumerable<PlannedItem> known = work.Ahead(chosen).Select(item => new PlannedItem(item, SessionPart.Ahead));
        IEnumerable<PlannedItem> added = IsBacklog(work) ? [] : work.New().Select(item => new PlannedItem(item, SessionPart.New));
        return known.Concat(added).ExceptBy(chosen.Select(planned => planned.Item.Key), planned => planned.Item.Key);
    }

    // Evenly mixed, so that a session cut short has had some of each.
    private static IEnumerable<PlannedItem> Spread(PlannedItem[] one, PlannedItem[] other) =>
        one.Select((item, index) => (item, (index + 0.5) / one.Length))
            .Concat(other.Select((item, index) => (item, (index + 0.5) / other.Length)))
            .OrderBy(entry => entry.Item2)
            .Select(entry => entry.item);

    private static bool IsBacklog(DailyWork work) => work.AllDue.Length > BacklogFrom * work.Capacity;

    private static Backlog BacklogOf(DailyWork work, ImmutableArray<PlannedItem> middle)
    {
        int today = middle.Count(planned => planned.Part == SessionPart.Due);
        // Of those brought back about a quarter comes round again before the rest is through.
        double net = Math.Max(1, today * 0.75);
        return new Backlog(work.AllDue.Length, today, (int)Math.Ceiling(work.AllDue.Length / net));
    }
}
