using System.Collections.Immutable;
using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>A voicing is heard and its shape picked from drawn ones. A choice that sounds the very same pitches would be no choice.</summary>
internal sealed class PickingRule : DirectionRule
{
    public static PickingRule Instance { get; } = new();

    /// <inheritdoc/>
    public override bool CanAsk(PracticeItem item) => item.Subject.Voicing.Pitches.Length > 1;

    /// <inheritdoc/>
    public override Question Make(PracticeItem item, AskContext context)
    {
        Voicing subject = item.Subject.Voicing;
        var choosing = new Choosing(item, context, (one, other) => !StringChanges.SoundAlike(one, other));
        bool isFirst = choosing.Met.Length == 1;
        ImmutableArray<DrillVoicing> table = choosing.Table(
            isFirst ? choosing.InSetup : [],
            isFirst ? Variations.OfOneString(subject).Select(voicing => new DrillVoicing(voicing)) : []);
        ImmutableArray<Choice> choices = Choices.Shuffled(ChoiceOf(subject), table.Skip(1).Select(shape => ChoiceOf(shape.Voicing)), context.Random);
        return new Question(item, AnswerForm.Choose, QuestionWords.AskPick)
        {
            Played = [subject],
            Drawn = [.. choices.Select(choice => choice.Voicing)],
            Reference = References.OpenStrings(subject.Setup),
            Choices = choices,
            Hints = Hints.ForPicking(subject, choices, context.Random),
        };
    }

    /// <inheritdoc/>
    public override string Expected(Question question) => TextOf(question.Subject);

    /// <inheritdoc/>
    public override Result<Verdict> Judge(Question question, Answer answer, AskContext context) => answer is Answer.Chosen chosen
        ? Choices.Pick(question, chosen).Select(choice => VerdictOn(question, choice.Voicing))
        : WrongForm(question);

    private static Verdict VerdictOn(Question question, Voicing picked)
    {
        Voicing right = question.Subject;
        bool isRight = picked.Equals(right);
        return new Verdict(isRight, TextOf(picked), TextOf(right), right)
        {
            Answered = picked,
            Differing = right.SoundsOtherwise(picked),
            WhatDiffers = isRight ? null : QuestionWords.WhatDiffers(right, picked),
            ConfusedWith = isRight ? null : ShapeKey.Of(picked),
        };
    }

    private static Choice ChoiceOf(Voicing voicing) => new(TextOf(voicing), voicing);

    private static string TextOf(Voicing voicing) => $"{voicing.ShapeName} ({voicing.Fretting.ToHomeText(voicing.Setup)})";
}
