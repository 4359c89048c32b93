using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>
/// Two voicings are heard: same or different, and which strings moved. Some of them, or 'different' alone, is right in part; a
/// string that did not move makes it wrong.
/// </summary>
internal sealed class ComparingRule : DirectionRule
{
    private const int MostMoved = 2;

    public static ComparingRule Instance { get; } = new();

    /// <inheritdoc/>
    public override bool CanAsk(PracticeItem item) => item.Subject.Voicing.Pitches.Length > 1;

    /// <inheritdoc/>
    public override Question Make(PracticeItem item, AskContext context)
    {
        Voicing subject = item.Subject.Voicing;
        DrillVoicing second = context.Random.Next(2) == 0 ? item.Subject : OtherThan(item, context);
        return new Question(item, AnswerForm.Compare, QuestionWords.AskCompare)
        {
            Played = [subject, second.Voicing],
            Partner = second,
            Hints = Hints.ForComparing(subject, subject.SoundsOtherwise(second.Voicing), context.Random),
        };
    }

    /// <inheritdoc/>
    public override string Expected(Question question) => TextOf(Moved(question).Count == 0, Moved(question));

    /// <inheritdoc/>
    public override Result<Verdict> Judge(Question question, Answer answer, AskContext context) =>
        answer is Answer.Compared compared ? VerdictOn(question, compared) : WrongForm(question);

    private static DrillVoicing OtherThan(PracticeItem item, AskContext context) => context
        .Alternatives(item, 1, other => item.Subject.Voicing.SoundsOtherwise(other.Voicing).Count is > 0 and <= MostMoved)
        .FirstOrDefault(item.Subject);

    private Verdict VerdictOn(Question question, Answer.Compared compared)
    {
        StringSet moved = Moved(question);
        bool isRight = compared.IsSame == (moved.Count == 0) && compared.Moved.Except(moved).Count == 0;
        Voicing second = question.Partner!.Voicing;
        return new Verdict(isRight, TextOf(compared.IsSame, compared.Moved), Expected(question), question.Subject)
        {
            IsPartly = isRight && compared.Moved != moved,
            Answered = second,
            Differing = moved,
            WhatDiffers = moved.Count > 0 ? QuestionWords.WhatDiffers(question.Subject, second) : null,
            ConfusedWith = compared.IsSame && moved.Count > 0 ? question.Partner.Key : null,
        };
    }

    private static StringSet Moved(Question question) => question.Subject.SoundsOtherwise(question.Partner!.Voicing);

    private static string TextOf(bool isSame, StringSet moved) => isSame ? QuestionWords.Same : QuestionWords.Different(moved);
}
