using System.Collections.Immutable;
using Clampwise.Fretboard;

namespace Clampwise.Practice;

/// <summary>What is shown before a question may be asked.</summary>
internal static class Cards
{
    // Between a card and its question: enough that it is recalled and not read off (our judgement).
    private const int QuestionsBetween = 2;

    /// <summary>A step to the card that must come before a question; null if it may be asked.</summary>
    public static SessionStep? Before(SessionState state, PlannedItem planned, Stamp stamp, SessionWorld world)
    {
        Setup setup = planned.Item.Drill.Setup;
        if (world.Options.HasGuitar && !setup.Equals(state.ClampsAt))
        {
            return Show(state with { ClampsAt = setup }, new Card.ClampsMove(setup, state.ClampsAt), stamp);
        }

        if (!IsNew(state, planned.Item))
        {
            return null;
        }

        ImmutableArray<PlannedItem> rest = state.Queue.Remove(planned);
        SessionState shown = state with
        {
            Queue = InBlock(rest, planned, QuestionsBetween),
            CardsShown = state.CardsShown.Add(planned.Item.Key.Shape),
        };
        return Show(shown, new Card.NewShape(planned.Item, LikeShape.Of(planned.Item, world.Repertoire, state)), stamp);
    }

    /// <summary>The questions with one more that comes after so many, or sooner if the clamps would have to move first.</summary>
    public static ImmutableArray<PlannedItem> InBlock(ImmutableArray<PlannedItem> queue, PlannedItem planned, int after)
    {
        int run = queue.TakeWhile(other => other.Item.Drill.Setup.Equals(planned.Item.Drill.Setup)).Count();
        return queue.Insert(Math.Min(after, run), planned);
    }

    // Nobody is asked what they were never shown.
    private static bool IsNew(SessionState state, PracticeItem item) => !state.CardsShown.Contains(item.Key.Shape)
        && Directions.All.All(direction => !state.Memory.Items.ContainsKey(item.Key with { Direction = direction }));

    private static SessionStep Show(SessionState state, Card card, Stamp stamp) =>
        SessionStep.To(Clocks.Settle(state with { Phase = SessionPhase.Showing, Card = card, Open = null }, stamp.Now), new SessionEffect.ShowCard(card));
}
