namespace Clampwise.Practice;

/// <summary>One question answered: one event, one update of one memory.</summary>
/// <param name="Id">Made when the question was shown.</param>
/// <param name="At">When it was answered, UTC.</param>
/// <param name="AskedAt">When it was shown, UTC.</param>
/// <param name="Item">What was asked.</param>
/// <param name="Drill">The drill that it was asked from.</param>
/// <param name="Session">The session that it belongs to.</param>
/// <param name="Day">The practice day on which it was answered.</param>
/// <param name="Grade">How well it was recalled.</param>
/// <param name="IsCorrect">True if the answer was right.</param>
public sealed record Attempt(
    EntryId Id,
    DateTimeOffset At,
    DateTimeOffset AskedAt,
    ItemKey Item,
    DrillId Drill,
    SessionId Session,
    PracticeDay Day,
    Grade Grade,
    bool IsCorrect) : LogEntry(Id, At)
{
    /// <summary>The setup in which it was asked, as setup text; the item itself knows only its rig.</summary>
    public string Setup { get; init; } = "";

    /// <summary>What was answered, as text; empty if the player said that they did not know.</summary>
    public string Answer { get; init; } = "";

    /// <summary>The first right answer, as text.</summary>
    public string Expected { get; init; } = "";

    /// <summary>True if the player said that they did not know.</summary>
    public bool DidNotKnow { get; init; }

    /// <summary>The shape that a wrong answer was the right one for; null if none is known.</summary>
    public ShapeKey? ConfusedWith { get; init; }

    /// <summary>The second voicing of a question about two; null otherwise.</summary>
    public ShapeKey? Partner { get; init; }

    /// <summary>Hint steps that were shown: 0 or more.</summary>
    public int Hints { get; init; }

    /// <summary>How long the player thought: without sound, pauses, time away from the window, and typing or placing.</summary>
    public TimeSpan Thinking { get; init; }

    /// <summary>True if the same shape was asked in another direction earlier on that day, so that the answer was warm.</summary>
    public bool IsPrimed { get; init; }

    /// <summary>From how many choices the answer was picked; 0 if it was given freely.</summary>
    public int Choices { get; init; }

    /// <summary>True if it was right without choices and without help.</summary>
    public bool IsFree => IsCorrect && Choices == 0 && Hints == 0;

    /// <summary>The chance of being right by luck, 0 to 1.</summary>
    public double Luck => Choices > 0 ? 1.0 / Choices : Item.Direction.Facts().Luck;

    /// <summary>The chord family of the voicing, such as <c>minor</c>: skill is counted for each direction and family.</summary>
    public ChordFamily Family { get; init; }

    /// <summary>The chance of a right answer, 0 to 1, as it was foreseen when the question was asked; null if nothing was.</summary>
    public double? Foreseen { get; init; }
}
