using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>How one direction asks and judges. To add a direction: a rule like these, and its line in <see cref="QuestionMaker"/>.</summary>
internal abstract class DirectionRule
{
    /// <summary>True if the item makes sense in this direction.</summary>
    public virtual bool CanAsk(PracticeItem item) => item.Subject.Voicing.Shape.First.Quality is not null;

    /// <summary>The item as a question.</summary>
    public abstract Question Make(PracticeItem item, AskContext context);

    /// <summary>The first right answer as text.</summary>
    public abstract string Expected(Question question);

    /// <summary>The verdict on an answer other than 'not known', or why it cannot be taken as one.</summary>
    public abstract Result<Verdict> Judge(Question question, Answer answer, AskContext context);

    /// <summary>The fault of an answer in another form than the question asks for.</summary>
    protected static Fault WrongForm(Question question) => PracticeWords.WrongForm(question.Form);
}
