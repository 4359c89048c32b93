using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>Picks the next question of a session.</summary>
internal static class Asking
{
    // About five minutes of rest in each 25 (common practice, no source).
    public static TimeSpan RestEvery { get; } = TimeSpan.FromMinutes(25);

    /// <summary>The state with the next question open, or the end of the session.</summary>
    public static SessionStep Next(SessionState state, Stamp stamp, SessionWorld world)
    {
        SessionState before = state with { BeforeAnswer = null, Card = null };
        if (state.LeftAt(stamp.Now) <= TimeSpan.Zero)
        {
            return Finishing.Finish(before, stamp, world, wasCutShort: false);
        }

        int rests = (int)(state.Clock.At(stamp.Now) / RestEvery);
        return rests > state.RestsOffered
            ? Pick(before with { RestsOffered = rests }, stamp, world).Before(new SessionEffect.Notice(SessionWords.Rest))
            : Pick(before, stamp, world);
    }

    private static SessionStep Pick(SessionState state, Stamp stamp, SessionWorld world)
    {
        bool isClosing = state.LeftAt(stamp.Now) is { } left && left <= TimeFor(state);
        if (!isClosing && (Take(state, Block(state, world)) ?? Take(state, state.Queue)) is { } queued)
        {
            return Cards.Before(state, queued, stamp, world) ?? Open(state with { Queue = state.Queue.Remove(queued) }, queued, stamp, world);
        }

        return state.ClosersLeft > 0 && (Take(state, Here(state, state.Close, world)) ?? Take(state, Here(state, KnownAgain(state), world))) is { } last
            ? Open(state with { Queue = [], Close = state.Close.Remove(last), ClosersLeft = state.ClosersLeft - 1 }, last, stamp, world)
            : Finishing.Finish(state, stamp, world, wasCutShort: false);
    }

    // While the guitar is in hand, all that is left in one setup comes before the clamps move.
    private static ImmutableArray<PlannedItem> Block(SessionState state, SessionWorld world) => Here(state, state.Queue, world) is { IsEmpty: false } here
        ? here
        : [.. state.Queue.TakeWhile(planned => planned.Item.Drill.Setup.Equals(state.Queue[0].Item.Drill.Setup))];

    private static ImmutableArray<PlannedItem> Here(SessionState state, ImmutableArray<PlannedItem> items, SessionWorld world) =>
        world.Options.HasGuitar && state.ClampsAt is { } setup ? items.RemoveAll(planned => !planned.Item.Drill.Setup.Equals(setup)) : items;

    // Whoever has just begun has nothing solid yet: what went well in this very session closes it.
    private static ImmutableArray<PlannedItem> KnownAgain(SessionState state) => state.Length is null ? [] : [.. state.Outcomes
        .Where(outcome => outcome.Attempt.Grade >= Grade.Steady && !outcome.Attempt.Item.Direction.IsInTime() && state.Asked.Count(item => item == outcome.Attempt.Item) < 3)
        .OrderByDescending(outcome => outcome.Attempt.Grade).ThenBy(outcome => outcome.Attempt.Thinking)
        .Select(outcome => new PlannedItem(outcome.Planned.Item, SessionPart.Close))];

    /// <summary>The session without what works the hand.</summary>
    public static SessionState WithoutHandWork(SessionState state) => state with
    {
        Queue = state.Queue.RemoveAll(planned => planned.Item.Key.Direction.IsInTime()),
        Close = state.Close.RemoveAll(planned => planned.Item.Key.Direction.IsInTime()),
    };

    /// <summary>The queue with an item to come again once the shape has had its distance.</summary>
    public static ImmutableArray<PlannedItem> AskAgain(ImmutableArray<PlannedItem> queue, PracticeItem item) =>
        Cards.InBlock(queue, new PlannedItem(item, SessionPart.Again), Spacing.Siblings);

    private static TimeSpan TimeFor(SessionState state) =>
        state.ClosersLeft * Pace.Of(state.Close.IsEmpty ? Direction.SeeShapeSayShapeName : state.Close[0].Item.Key.Direction, state.Memory);

    // The distance between questions about one shape is kept while it can be, and given up before anything is left unasked; but what was
    // answered a moment ago is not asked once more at once.
    private static PlannedItem? Take(SessionState state, ImmutableArray<PlannedItem> from) => Beside(state, from) ?? Enumerable.Range(0, state.Spacing)
        .Select(less => First(state, from, state.Spacing - less, isNamed: true) ?? First(state, from, state.Spacing - less, isNamed: false))
        .FirstOrDefault(planned => planned is not null);

    // What was confused comes straight after the one that it was taken for.
    private static PlannedItem? Beside(SessionState state, ImmutableArray<PlannedItem> from) =>
        state.Open is { Planned: { Part: SessionPart.Contrast, Item.Key: var last } }
            ? from.FirstOrDefault(planned => planned.Part == SessionPart.Contrast && planned.Item.Key.Direction == last.Direction
                && planned.Item.Key.Shape != last.Shape && Contrasts.WereConfused(state.Memory, last.Shape, planned.Item.Key.Shape))
            : null;

    private static PlannedItem? First(SessionState state, ImmutableArray<PlannedItem> from, int spacing, bool isNamed) => from.FirstOrDefault(planned =>
        (!isNamed || IsNamed(state, planned))
        && (spacing > 1 || planned.Part != SessionPart.Again || state.Spacing == 1)
        && (state.CanListen || !planned.Item.Key.Direction.NeedsSound())
        && Spacing.Allows(planned.Item.Key, state.Asked, spacing));

    // A shape is seen and named before it is asked in any other direction.
    private static bool IsNamed(SessionState state, PlannedItem planned) => state.Kind != SessionKind.Daily
        || planned.Item.Key.Direction == Directions.First
        || Directions.All.Any(direction => state.Memory.Items.ContainsKey(planned.Item.Key with { Direction = direction }));

    private static SessionStep Open(SessionState state, PlannedItem planned, Stamp stamp, SessionWorld world)
    {
        Question question = QuestionMaker.Make(planned.Item, ContextOf(state, stamp.Now, world));
        SessionState asking = state with
        {
            Phase = SessionPhase.Asking,
            Open = new OpenQuestion(planned, question),
            Asked = state.Asked.Add(planned.Item.Key),
        };
        return SessionStep.To(Clocks.Settle(asking, stamp.Now), new SessionEffect.Show(question, planned.Part));
    }

    /// <summary>What questions are made and judged from; its chance hangs on the seed and the number of the question alone.</summary>
    public static AskContext ContextOf(SessionState state, Moment now, SessionWorld world) => new(
        world.Repertoire, state.Memory, world.Calendar.DayOf(now.Utc), world.Options, new Random(HashOf(state.Seed, state.Asked.Count)));

    // HashCode is seeded anew for each run of the program; this must be the same each time.
    private static int HashOf(int seed, int number) => unchecked((seed * 397) ^ (number * 7919));
}
