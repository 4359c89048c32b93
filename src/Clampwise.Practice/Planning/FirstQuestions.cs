using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>The first three questions that a new player gets: a shape to name, a voicing to name by ear, and another shape.</summary>
public static class FirstQuestions
{
    private static readonly ImmutableArray<Direction> s_directions = [Direction.SeeShapeSayShapeName, Direction.HearSayName, Direction.SeeShapeSayShapeName];

    /// <summary>The plan, over the first voicings of a drill; without sound all are seen.</summary>
    public static SessionPlan Plan(Drill drill, bool canListen)
    {
        PracticeItem[] items = [.. Repertoire.Of([drill]).Items];
        IEnumerable<PlannedItem> asked = s_directions
            .Zip(drill.Voicings, (direction, voicing) => items.FirstOrDefault(item =>
                item.Key == new ItemKey(voicing.Key, canListen ? direction : Direction.SeeShapeSayShapeName)))
            .OfType<PracticeItem>()
            .Select(item => new PlannedItem(item, SessionPart.New));
        return new SessionPlan(SessionKind.Quiz, [.. asked], [], null);
    }
}
