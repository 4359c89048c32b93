using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>Puts items as questions and judges answers: the one place that knows which rule serves which direction.</summary>
public static class QuestionMaker
{
    /// <summary>True if an item makes sense in its direction: names are asked only of what has one.</summary>
    public static bool CanAsk(PracticeItem item) => RuleOf(item.Key.Direction).CanAsk(item);

    /// <summary>The item as a question.</summary>
    public static Question Make(PracticeItem item, AskContext context) => RuleOf(item.Key.Direction).Make(item, context);

    /// <summary>
    /// What an answer is worth. A fault means that it could not be taken as an answer at all, such as a name that does not read or a
    /// finger behind a clamp: the question stays open and nothing is lost.
    /// </summary>
    public static Result<Verdict> Judge(Question question, Answer answer, AskContext context)
    {
        DirectionRule rule = RuleOf(question.Direction);
        return answer is Answer.NotKnown
            ? new Verdict(false, "", rule.Expected(question), question.Subject) { DidNotKnow = true }
            : rule.Judge(question, answer, context);
    }

    private static DirectionRule RuleOf(Direction direction) => direction switch
    {
        Direction.SeeShapeSayShapeName => NamingRule.ShapeName,
        Direction.SeeShapeSaySoundingName => NamingRule.SoundingName,
        Direction.HearSayName => NamingRule.Heard,
        Direction.NamePlaceShape => PlacingRule.Instance,
        Direction.HearPickShape => PickingRule.Instance,
        Direction.HearTwoCompare => ComparingRule.Instance,
        Direction.ShapeNameSaySoundingName => TranslatingRule.ToSounding,
        Direction.SoundingNameSayShapeName => TranslatingRule.ToShape,
        Direction.ChangeInTime => ChangingRule.Instance,
        _ => throw new ArgumentOutOfRangeException(nameof(direction)),
    };
}
