using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>Clean changes between two shapes in one minute: 30 is right, 60 the goal after it (common practice, no source).</summary>
internal sealed class ChangingRule : DirectionRule
{
    public static ChangingRule Instance { get; } = new();

    /// <inheritdoc/>
    public override bool CanAsk(PracticeItem item) => item.Drill.Voicings.Length > 1 && item.Subject.Voicing.Pitches.Length > 0;

    /// <inheritdoc/>
    public override Question Make(PracticeItem item, AskContext context)
    {
        DrillVoicing[] others = [.. item.Drill.Voicings.Where(other => other.Key != item.Key.Shape)];
        DrillVoicing partner = others.Length > 0 ? others[context.Random.Next(others.Length)] : item.Subject;
        return new Question(item, AnswerForm.CountChanges, QuestionWords.AskChange(item.Subject.Voicing, partner.Voicing))
        {
            Drawn = [item.Subject.Voicing, partner.Voicing],
            Partner = partner,
            Hints = Hints.ForChanging(item.Subject.Voicing, partner.Voicing, context.Options.Hand),
        };
    }

    /// <inheritdoc/>
    public override string Expected(Question question) => QuestionWords.Changes(ChangePace.RightFrom);

    /// <inheritdoc/>
    public override Result<Verdict> Judge(Question question, Answer answer, AskContext context)
    {
        if (answer is not Answer.Changes changes)
        {
            return WrongForm(question);
        }

        return changes.Count < 0
            ? PracticeWords.NegativeChanges(changes.Count)
            : new Verdict(changes.Count >= ChangePace.RightFrom, QuestionWords.Changes(changes.Count), Expected(question), question.Subject)
            {
                Answered = question.Partner!.Voicing,
                ChangesPerMinute = changes.Count,
            };
    }
}
