using Clampwise.Practice;

namespace Clampwise.Application;

/// <summary>Where a session shows: on the screen, or line by line.</summary>
public interface ISessionView
{
    /// <summary>Shows a question; its sound is being played.</summary>
    void ShowQuestion(Question question);

    /// <summary>Shows a card; the sound of its shape is being played.</summary>
    void ShowCard(Card card);

    /// <summary>Shows a hint.</summary>
    void ShowHint(Hint hint);

    /// <summary>Shows a verdict; what belongs to it is being played. The answer is on the disk.</summary>
    void ShowVerdict(Verdict verdict, Grade grade);

    /// <summary>Shows the grade that now counts for the last answer.</summary>
    void ShowGrade(Grade grade);

    /// <summary>Says something in passing.</summary>
    void Say(string words);

    /// <summary>The session is over.</summary>
    void Finish(SessionSummary summary);
}
