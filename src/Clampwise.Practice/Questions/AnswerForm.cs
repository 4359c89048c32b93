namespace Clampwise.Practice;

/// <summary>In what form a question wants its answer.</summary>
public enum AnswerForm
{
    /// <summary>A chord name.</summary>
    Name,

    /// <summary>A shape placed on the fretboard.</summary>
    Place,

    /// <summary>A shape played on the guitar, judged by the player once it is shown.</summary>
    Play,

    /// <summary>One of the choices.</summary>
    Choose,

    /// <summary>Same or different, and which strings moved.</summary>
    Compare,

    /// <summary>How many clean changes were made.</summary>
    CountChanges,
}
