using System.Collections.Immutable;
using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>A shape is seen or a voicing heard, and named. Every correct reading is right, in every spelling.</summary>
internal sealed class NamingRule : DirectionRule
{
    private readonly Func<Voicing, Sonority> _asked;
    private readonly bool _isHeard;

    private NamingRule(Func<Voicing, Sonority> asked, bool isHeard) => (_asked, _isHeard) = (asked, isHeard);

    public static NamingRule ShapeName { get; } = new(voicing => voicing.Shape, isHeard: false);

    public static NamingRule SoundingName { get; } = new(voicing => voicing.Sounding, isHeard: false);

    /// <summary>Nobody hears where the clamp sits: a heard chord may be named either way.</summary>
    public static NamingRule Heard { get; } = new(voicing => voicing.Sounding, isHeard: true);

    /// <inheritdoc/>
    public override Question Make(PracticeItem item, AskContext context)
    {
        Voicing subject = item.Subject.Voicing;
        ImmutableArray<Choice> choices = context.OffersChoices(item.Key) ? ChoicesFor(item, context) : [];
        return new Question(item, choices.IsEmpty ? AnswerForm.Name : AnswerForm.Choose, QuestionWords.AskName(item.Key.Direction, subject.Setup))
        {
            Drawn = _isHeard ? [] : [subject],
            Played = _isHeard ? [subject] : [],
            Reference = _isHeard ? References.OpenStrings(subject.Setup) : null,
            Choices = choices,
            Hints = Hints.ForName(_asked(subject), subject, _isHeard, choices, context.Random),
        };
    }

    /// <inheritdoc/>
    public override string Expected(Question question) => _asked(question.Subject).Name;

    /// <inheritdoc/>
    public override Result<Verdict> Judge(Question question, Answer answer, AskContext context) => answer switch
    {
        Answer.Chosen chosen when question.Choices.Length > 0 => Choices.Pick(question, chosen).Then(choice => JudgeName(question, choice.Text, context)),
        Answer.Name name => JudgeName(question, name.Text, context),
        _ => WrongForm(question),
    };

    private Result<Verdict> JudgeName(Question question, string text, AskContext context)
    {
        Voicing right = question.Subject;
        return AnsweredName.Read(text).Select(symbol =>
        {
            Sonority asked = _asked(right);
            Acceptance acceptance = asked.Accepts(symbol);
            if (NameVerdicts.IsRight(acceptance, symbol, asked))
            {
                return NameVerdicts.Right(symbol, acceptance, asked, right);
            }

            bool isOther = (asked == right.Shape ? right.Sounding : right.Shape).Accepts(symbol).IsAccepted;
            Verdict wrong = !isOther && TrapOf(right)?.VerdictOn(symbol) is { } trapped ? trapped : Wrong(question, symbol, context);
            return isOther && _isHeard
                ? new Verdict(true, symbol.ToString(), asked.Name, right) { Remark = QuestionWords.ShapeNameTaken(asked.Name) }
                : isOther ? wrong with { Remark = QuestionWords.OtherSide(question.Direction, asked.Name), WhatDiffers = null } : wrong;
        });
    }

    private Verdict Wrong(Question question, ChordSymbol symbol, AskContext context)
    {
        Voicing right = question.Subject;
        bool IsNamed(Voicing voicing) => _asked(voicing).First.Is(symbol);
        DrillVoicing? known = context.Repertoire.Others(question.Item)
            .Where(other => IsNamed(other.Voicing))
            .MaxBy(other => Likeness.OfSound(right, other.Voicing));
        Voicing? answered = known?.Voicing ?? Variations.Nearest(right, IsNamed);
        return new Verdict(false, symbol.ToString(), _asked(right).Name, right)
        {
            Answered = answered,
            Differing = answered is null ? default : right.SoundsOtherwise(answered),
            ConfusedWith = known?.Key,
            WhatDiffers = answered is null ? null : QuestionWords.WhatDiffers(right, answered),
        };
    }

    // What is seen can be read as under a full capo; what is heard cannot.
    private FullCapoTrap? TrapOf(Voicing voicing) => _isHeard ? null : FullCapoTrap.Of(voicing, _asked);

    private ImmutableArray<Choice> ChoicesFor(PracticeItem item, AskContext context)
    {
        Voicing subject = item.Subject.Voicing;
        var choosing = new Choosing(item, context, MayMeet);
        ImmutableArray<Voicing> row = _isHeard ? [] : BothNames.Row(subject, choosing.InSetup, _asked, context.Random);
        IEnumerable<Voicing> wrong = row.Length == context.Options.ChoiceCount ? row
            : choosing.Table(choosing.InSetup, context.Repertoire.Elsewhere(item), Variations.OfOneString(subject).Select(voicing => new DrillVoicing(voicing)))
                .Select(shape => shape.Voicing);
        return Choices.Shuffled(ChoiceOf(subject), wrong.Where(voicing => !voicing.Equals(subject)).Select(ChoiceOf), context.Random);
    }

    // Neither would do for the other, and neither is the other's name on the other side: then that would be there, and tell.
    private bool MayMeet(Voicing one, Voicing other) => IsWrong(one, other) && !BothNames.AreOne(one, other, _asked);

    private Choice ChoiceOf(Voicing voicing) => new(_asked(voicing).Name, voicing);

    private bool IsWrong(Voicing right, Voicing other) => _asked(other).First.Symbol is { } symbol
        && !NameVerdicts.IsRight(_asked(right).Accepts(symbol))
        && !(_isHeard && right.Shape.Accepts(symbol).IsAccepted);
}
