namespace Clampwise.Practice;

/// <summary>All that holds for one direction.</summary>
/// <param name="Direction">The direction.</param>
/// <param name="Code">The code that stands in files; it never changes.</param>
/// <param name="Title">In words.</param>
/// <param name="Seconds">The first guess at the usual thinking time, in seconds, until the player's own answers weigh more (our judgement).</param>
/// <param name="Hardness">How much harder than the first direction it is guessed to be, on the logistic scale of <see cref="Skill"/> (our judgement).</param>
internal sealed record DirectionFacts(Direction Direction, string Code, string Title, double Seconds, double Hardness)
{
    /// <summary>In two or three words, for a line that has room for no more.</summary>
    public required string Short { get; init; }

    /// <summary>True if the question is a sound.</summary>
    public bool NeedsSound { get; init; }

    /// <summary>True if a second voicing belongs to the question.</summary>
    public bool NeedsPartner { get; init; }

    /// <summary>True if the question is about names alone.</summary>
    public bool IsNamesOnly { get; init; }

    /// <summary>True if a voicing is seen or heard and its name is the answer.</summary>
    public bool IsNaming { get; init; }

    /// <summary>True if the name that is asked for is counted from the home clamp.</summary>
    public bool AsksShapeName { get; init; }

    /// <summary>True if the answer is one of several shapes.</summary>
    public bool PicksShape { get; init; }

    /// <summary>True if it is played against the clock rather than known.</summary>
    public bool IsInTime { get; init; }

    /// <summary>The chance of a right answer by luck alone where the form of the question offers no choices, 0 to 1.</summary>
    public double Luck { get; init; }
}
