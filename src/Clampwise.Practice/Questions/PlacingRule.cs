using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>
/// A shape name is given and the shape placed: any voicing that a hand can play and that bears the name is right. With the guitar in hand it
/// is played there, and the player says how it went.
/// </summary>
internal sealed class PlacingRule : DirectionRule
{
    public static PlacingRule Instance { get; } = new();

    /// <inheritdoc/>
    public override Question Make(PracticeItem item, AskContext context)
    {
        Voicing subject = item.Subject.Voicing;
        return new Question(item, context.Options.HasGuitar ? AnswerForm.Play : AnswerForm.Place, QuestionWords.AskPlace(subject.ShapeName, subject.Setup, context.Options.HasGuitar))
        {
            Given = subject.ShapeName,
            Hints = Hints.ForPlacing(subject),
        };
    }

    /// <inheritdoc/>
    public override string Expected(Question question) => question.Subject.ShapeName;

    /// <inheritdoc/>
    public override Result<Verdict> Judge(Question question, Answer answer, AskContext context) => answer switch
    {
        Answer.Placed placed => Voicing.Create(question.Setup, placed.Fretting).Then(voicing => JudgeVoicing(question, voicing, context)),
        Answer.Played played => new Verdict(played.Grade > Grade.Missed, PracticeWords.OwnJudgement, question.Subject.ShapeName, question.Subject) { OwnGrade = played.Grade },
        _ => WrongForm(question),
    };

    private static Result<Verdict> JudgeVoicing(Question question, Voicing placed, AskContext context)
    {
        Voicing right = question.Subject;
        if (placed.Pitches.IsEmpty)
        {
            return PracticeWords.NothingSounds;
        }

        Acceptance acceptance = placed.Shape.Accepts(right.Shape.First.Symbol!);
        bool isRight = placed.Equals(right) || NameVerdicts.IsRight(acceptance);
        if (isRight && context.Options.HandFault(placed) is { } fault)
        {
            return fault;
        }

        return new Verdict(isRight, placed.ShapeName, right.ShapeName, right)
        {
            IsPartly = !placed.Equals(right) && acceptance.Kind == AcceptanceKind.OtherBass,
            Answered = placed,
            Differing = right.SoundsOtherwise(placed),
            Remark = RemarkOn(placed, right, isRight),
            WhatDiffers = isRight ? null : QuestionWords.WhatDiffers(right, placed),
            ConfusedWith = isRight ? null : TakenFor(question, placed, context),
        };
    }

    private static string? RemarkOn(Voicing placed, Voicing right, bool isRight) =>
        placed.Equals(right) ? null : isRight ? QuestionWords.AnotherVoicing(placed, right) : QuestionWords.PlacedWas(placed);

    private static ShapeKey TakenFor(Question question, Voicing placed, AskContext context)
    {
        var own = ShapeKey.Of(placed);
        DrillVoicing[] others = [.. context.Repertoire.Others(question.Item)];
        return others.FirstOrDefault(other => other.Key == own)?.Key
            ?? others.FirstOrDefault(other => placed.Shape.First.Symbol is { } symbol && other.Voicing.Shape.First.Is(symbol))?.Key
            ?? own;
    }
}
