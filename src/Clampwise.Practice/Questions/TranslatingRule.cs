using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>From shape name to sounding name in a rig, or back: a matter of names, so it is asked once for each name.</summary>
internal sealed class TranslatingRule : DirectionRule
{
    private readonly bool _isToSounding;

    private TranslatingRule(bool isToSounding) => _isToSounding = isToSounding;

    public static TranslatingRule ToSounding { get; } = new(isToSounding: true);

    public static TranslatingRule ToShape { get; } = new(isToSounding: false);

    /// <summary>Without a clamp, in a tuning of its own letters, both names are one.</summary>
    public override bool CanAsk(PracticeItem item) => base.CanAsk(item) && item.Drill.Setup.ShapeShift != 0;

    /// <inheritdoc/>
    public override Question Make(PracticeItem item, AskContext context)
    {
        string given = GivenSide(item.Subject.Voicing).Name;
        return new Question(item, AnswerForm.Name, QuestionWords.AskTranslation(given, _isToSounding))
        {
            Given = given,
            Hints = Hints.ForTranslating(item.Drill.Setup, AskedSide(item.Subject.Voicing).First.Symbol!),
        };
    }

    /// <inheritdoc/>
    public override string Expected(Question question) => AskedSide(question.Subject).Name;

    /// <inheritdoc/>
    public override Result<Verdict> Judge(Question question, Answer answer, AskContext context) =>
        answer is Answer.Name name ? AnsweredName.Read(name.Text).Select(symbol => VerdictOn(question, symbol, context)) : WrongForm(question);

    private Verdict VerdictOn(Question question, ChordSymbol symbol, AskContext context)
    {
        Sonority asked = AskedSide(question.Subject);
        Acceptance acceptance = asked.Accepts(symbol);
        if (NameVerdicts.IsRight(acceptance, symbol, asked))
        {
            return NameVerdicts.Right(symbol, acceptance, asked, question.Subject);
        }

        bool isUnmoved = GivenSide(question.Subject).Accepts(symbol).IsAccepted;
        return new Verdict(false, symbol.ToString(), asked.Name, question.Subject)
        {
            Remark = isUnmoved ? QuestionWords.OtherSide(question.Direction, asked.Name) : QuestionWords.HomeUp(question.Setup),
            ConfusedWith = context.Repertoire.Others(question.Item).FirstOrDefault(other => AskedSide(other.Voicing).First.Is(symbol))?.Key,
        };
    }

    private Sonority AskedSide(Voicing voicing) => _isToSounding ? voicing.Sounding : voicing.Shape;

    private Sonority GivenSide(Voicing voicing) => _isToSounding ? voicing.Shape : voicing.Sounding;
}
