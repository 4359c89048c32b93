using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>What a session wants done, in this order. An entry to store comes before the verdict that rests on it.</summary>
public abstract record SessionEffect
{
    private SessionEffect()
    {
    }

    /// <summary>Show this question, play its sound, then report <see cref="SessionEvent.QuestionShown"/>.</summary>
    public sealed record Show(Question Question, SessionPart Part) : SessionEffect;

    /// <summary>Show this card, and play its shape if it has one; <see cref="SessionEvent.WentOn"/> leads on.</summary>
    public sealed record ShowCard(Card Card) : SessionEffect;

    /// <summary>Show a hint.</summary>
    /// <param name="Hint">The hint.</param>
    /// <param name="Left">How many more there are.</param>
    public sealed record ShowHint(Hint Hint, int Left) : SessionEffect;

    /// <summary>Write the entry to the log, flushed, before going on.</summary>
    public sealed record Store(LogEntry Entry) : SessionEffect;

    /// <summary>Show the verdict and play what it names.</summary>
    public sealed record ShowVerdict(Verdict Verdict, Grade Grade) : SessionEffect;

    /// <summary>The grade of the last answer is now this one.</summary>
    public sealed record ShowGrade(Grade Grade) : SessionEffect;

    /// <summary>The answer could not be taken as one, or there is nothing to do: say why; nothing has changed.</summary>
    public sealed record Refuse(Fault Fault) : SessionEffect;

    /// <summary>Say this in passing.</summary>
    public sealed record Notice(string Words) : SessionEffect;

    /// <summary>The session is over: show its summary.</summary>
    public sealed record Finish(SessionSummary Summary) : SessionEffect;
}
