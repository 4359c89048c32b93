using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>Picks the next question of a session.</summary>
internal static class Asking
{
    /// <summary>The state with the next question open, or the end of the session.</summary>
    public static SessionStep Next(SessionState state, Stamp stamp, SessionWorld world)
    {
        SessionState before = state with { BeforeAnswer = null };
        TimeSpan? left = state.LeftAt(stamp.Now);
        bool isClosing = left is { } time && time <= TimeFor(state);
        if (left <= TimeSpan.Zero)
        {
            return Finishing.Finish(before, stamp, world, wasCutShort: false);
        }

        return (isClosing ? null : Take(before, before.Queue)) is { } queued
            ? Open(before with { Queue = before.Queue.Remove(queued) }, queued, stamp, world)
            : before.ClosersLeft > 0 && Take(before, before.Close) is { } last
                ? Open(before with { Queue = [], Close = before.Close.Remove(last), ClosersLeft = before.ClosersLeft - 1 }, last, stamp, world)
                : Finishing.Finish(before, stamp, world, wasCutShort: false);
    }

    /// <summary>The session without what works the hand.</summary>
    public static SessionState WithoutHandWork(SessionState state) => state with
    {
        Queue = state.Queue.RemoveAll(planned => planned.Item.Key.Direction == Direction.ChangeInTime),
        Close = state.Close.RemoveAll(planned => planned.Item.Key.Direction == Direction.ChangeInTime),
    };

    /// <summary>The queue with an item to come again once the shape has had its distance.</summary>
    public static ImmutableArray<PlannedItem> AskAgain(ImmutableArray<PlannedItem> queue, PracticeItem item) =>
        queue.Insert(Math.Min(Spacing.Siblings, queue.Length), new PlannedItem(item, SessionPart.Again));

    private static TimeSpan TimeFor(SessionState state) =>
        state.Close.Take(state.ClosersLeft).Aggregate(TimeSpan.Zero, (sum, planned) => sum + Pace.Of(planned.Item.Key.Direction, state.Memory));

    private static PlannedItem? Take(SessionState state, ImmutableArray<PlannedItem> from) => from.FirstOrDefault(planned =>
        (state.CanListen || !planned.Item.Key.Direction.NeedsSound()) && Spacing.Allows(planned.Item.Key, state.Asked, state.Spacing));

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
